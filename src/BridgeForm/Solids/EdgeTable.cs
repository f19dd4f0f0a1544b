using System.Numerics;

namespace BridgeForm.Solids;

/// <summary>
/// A map from a pair of vertex numbers to a number. Open addressing; far cheaper than a dictionary for the few dozen edges of a
/// member.
/// </summary>
/// <param name="pairs">As many pairs find a place before the table grows.</param>
internal sealed class EdgeTable(int pairs = 64)
{
    private const ulong Spread = 0x9E3779B97F4A7C15; // 2^64 / golden ratio: Fibonacci hashing (Knuth, vol. 3, 6.4)

    private long[] _keys = new long[Places(pairs)];
    private int[] _values = new int[Places(pairs)];
    private int _shift = 64 - BitOperations.Log2((uint)Places(pairs));

    public int Count { get; private set; }

    public void Clear()
    {
        if (Count > 0)
        {
            Array.Clear(_keys);
        }

        Count = 0;
    }

    /// <summary>The number of the pair without regard to order, or -1.</summary>
    public int Undirected(int a, int b) => a < b ? Find(a, b) : Find(b, a);

    /// <summary>Sets the number of the pair without regard to order.</summary>
    public void SetUndirected(int a, int b, int value)
    {
        if (a < b)
        {
            Slot(a, b) = value;
        }
        else
        {
            Slot(b, a) = value;
        }
    }

    public int Find(int a, int b)
    {
        var key = Key(a, b);
        for (var i = Home(key); ; i = (i + 1) & (_keys.Length - 1))
        {
            if (_keys[i] == key)
            {
                return _values[i];
            }

            if (_keys[i] == 0)
            {
                return -1;
            }
        }
    }

    /// <summary>The place of the pair's number; a new pair starts at 0. Valid until the next call.</summary>
    public ref int Slot(int a, int b)
    {
        if (2 * Count >= _keys.Length)
        {
            Grow();
        }

        var key = Key(a, b);
        var i = Home(key);
        while (_keys[i] != key && _keys[i] != 0)
        {
            i = (i + 1) & (_keys.Length - 1);
        }

        if (_keys[i] == 0)
        {
            _keys[i] = key;
            _values[i] = 0;
            Count++;
        }

        return ref _values[i];
    }

    // A power of two, no more than half of it taken.
    private static int Places(int pairs) => (int)BitOperations.RoundUpToPowerOf2((uint)Math.Max(2 * pairs, 2));

    // One more than the pair, so that no key is 0, the mark of an empty place.
    private static long Key(int a, int b) => (((long)a << 32) | (uint)b) + 1;

    private int Home(long key) => (int)(((ulong)key * Spread) >> _shift);

    private void Grow()
    {
        var (keys, values) = (_keys, _values);
        _keys = new long[2 * keys.Length];
        _values = new int[2 * keys.Length];
        _shift--;
        for (var i = 0; i < keys.Length; i++)
        {
            if (keys[i] == 0)
            {
                continue;
            }

            var at = Home(keys[i]);
            while (_keys[at] != 0)
            {
                at = (at + 1) & (_keys.Length - 1);
            }

            (_keys[at], _values[at]) = (keys[i], values[i]);
        }
    }
}
