using System.Collections.Immutable;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace BridgeForm.Project.Editing;

/// <summary>Finds where every node stands, by the marks of the parser's events; of a text that the reader has taken already.</summary>
internal sealed class SpotReader
{
    private readonly string text;
    private readonly Parser parser;

    private SpotReader(string text)
    {
        this.text = text;
        parser = new Parser(new StringReader(text));
    }

    /// <summary>The root's spot.</summary>
    public static Spot Read(string text)
    {
        var reader = new SpotReader(text);
        while (reader.parser.MoveNext() && reader.parser.Current is StreamStart or DocumentStart)
        {
        }

        return reader.Node(0);
    }

    private ParsingEvent Current => parser.Current ?? throw new YamlException("the text ends in the middle of a value");

    private static int Index(Mark mark) => (int)mark.Index;

    // After is where an empty value would stand: behind the colon or dash before it.
    private Spot Node(int after)
    {
        switch (Current)
        {
            case MappingStart map:
                parser.MoveNext();
                return Map(map, after);
            case SequenceStart list:
                parser.MoveNext();
                return List(list, after);
            case var scalar:
                parser.MoveNext();
                return Single(Index(scalar.Start), Index(scalar.End), after);
        }
    }

    // A block of text ends with the line end of its last line; what belongs to it is its characters.
    private ScalarSpot Single(int start, int end, int after) => start == end
        ? new ScalarSpot(after, after)
        : new ScalarSpot(start, start + text.AsSpan(start, end - start).TrimEnd().Length);

    private MapSpot Map(MappingStart begin, int after)
    {
        var entries = ImmutableArray.CreateBuilder<SpotEntry>();
        while (Current is not MappingEnd)
        {
            var word = Current is Scalar scalar ? scalar.Value : "";
            var key = Node(after);
            var colon = text.IndexOf(':', key.End);
            after = colon < 0 ? key.End : colon + 1;
            var value = Node(after);
            after = value.End;
            entries.Add(new SpotEntry(word, key.Start, key.End, value));
        }

        var (flow, start) = (begin.Style == MappingStyle.Flow, Index(begin.Start));
        var end = flow ? Closed('}') : entries.Count > 0 ? entries[^1].End : start;
        parser.MoveNext();
        return new MapSpot(start, end, flow, entries.ToImmutable());
    }

    private ListSpot List(SequenceStart begin, int after)
    {
        var items = ImmutableArray.CreateBuilder<Spot>();
        while (Current is not SequenceEnd)
        {
            var item = Node(after);
            after = item.End;
            items.Add(item);
        }

        var (flow, start) = (begin.Style == SequenceStyle.Flow, Index(begin.Start));
        var end = flow ? Closed(']') : items.Count > 0 ? items[^1].End : start;
        parser.MoveNext();
        return new ListSpot(start, end, flow, items.ToImmutable());
    }

    // Behind the bracket; a pair that stands in a list without braces has none.
    private int Closed(char bracket)
    {
        var at = Index(Current.Start);
        return at < text.Length && text[at] == bracket ? at + 1 : at;
    }
}
