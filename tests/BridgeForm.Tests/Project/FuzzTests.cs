using BridgeForm.Benchmarks.Fuzz;
using CsCheck;

namespace BridgeForm.Tests.Project;

/// <summary>Whatever happens to a file on its way, the reader answers with parameters or with faults that have a place.</summary>
public sealed class FuzzTests
{
    private const string Ugly = "{}[]&*!|>'\"%@`#,:?- \t\n\r0123456789.eE/½°′″abcxyz\u0085\u2028\0";

    private static readonly Gen<(int Place, int Length, string Text)> Mutation =
        Gen.Select(Gen.Int[0, Examples.Contract.Length - 1], Gen.Int[0, 12], Gen.String[Gen.Char[Ugly], 0, 6]);

    [Fact]
    public void Mutated_files_never_throw() =>
        Mutation.Array[1, 6].Sample(
            mutations =>
            {
                var text = mutations.Aggregate(Examples.Contract, Mutate);
                var reading = Examples.Read(text);
                return (reading.Parameters is null) == (reading.Faults.Length > 0)
                    && reading.Faults.All(
                        f => f.Line >= 1 && f.Column >= 1 && f.Message.Length > 0
                            && f.Line <= 2 + text.Count(c => c is '\n' or '\r' or '\u0085' or '\u2028'));
            },
            iter: 3000,
            seed: "dF19vE00qBj1"); // once ran the parser out of events inside a mapping

    [Fact]
    public void Rubbish_never_throws() =>
        Gen.String[Gen.Char[Ugly], 0, 200].Sample(text => Examples.Read(text).Faults.Length > 0, iter: 3000);

    /// <summary>The first of the files that the long command of the benchmarks reads; it goes on to as many as wanted.</summary>
    [Fact]
    public void Five_thousand_spoiled_files_get_one_kind_of_answer() =>
        Assert.Empty(Enumerable.Range(1, 5_000).Select(ReadCase.Of).OfType<string>().Take(3));

    // Swapping whole values between keys keeps the file YAML and reaches the checks behind the parser.
    [Fact]
    public void Values_at_wrong_keys_never_throw()
    {
        string[] values = [
            "30 ft", "0 in", "-1 in", "1e9 m", "6 %", "8 deg", "44.9 deg", "3", "auto", "[]", "{}", "[[1 m, 2 m]]", "true", "2x4", "16x16",
            "1 x 1 mm", "5/8 in", "20 ft", "cedar", "\"\"", "~",
        ];
        var lines = Examples.Contract.Split('\n');
        Gen.Select(Gen.Int[0, lines.Length - 1], Gen.Int[0, values.Length - 1], Gen.Int[0, 3]).Array[1, 8].Sample(
            changes =>
            {
                var text = (string[])lines.Clone();
                foreach (var (line, value, nth) in changes)
                {
                    text[line] = Swap(text[line], values[value], nth);
                }

                var reading = Examples.Read(string.Join('\n', text));
                return (reading.Parameters is null) == (reading.Faults.Length > 0);
            },
            iter: 3000);
    }

    private static string Mutate(string text, (int Place, int Length, string Text) m)
    {
        var place = Math.Min(m.Place, text.Length);
        var length = Math.Min(m.Length, text.Length - place);
        return text[..place] + m.Text + text[(place + length)..];
    }

    private static string Swap(string line, string value, int nth)
    {
        var parts = line.Split(": ");
        var i = 1 + (nth % Math.Max(1, parts.Length - 1));
        if (i >= parts.Length)
        {
            return line;
        }

        var end = parts[i].IndexOfAny([',', '}', '#']);
        parts[i] = value + (end < 0 ? "" : " " + parts[i][end..]);
        return string.Join(": ", parts);
    }
}
