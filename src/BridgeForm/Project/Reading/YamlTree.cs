using System.Collections.Immutable;
using BridgeForm.Project.Reading.Faults;
using BridgeForm.Quantities;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace BridgeForm.Project.Reading;

/// <summary>
/// Builds a file's nodes from the events of the YAML parser. Refuses what a project file has no use for and what could be
/// used to overwhelm a reader: anchors, aliases, tags, several documents, deep nesting.
/// </summary>
internal sealed class YamlTree
{
    /// <summary>The definition needs six levels; a few more let a message say what is wrong rather than that it is deep.</summary>
    private const int DeepestLevel = 16;

    private readonly Parser parser;
    private readonly FaultList faults;

    private Mark latest = Mark.Empty;

    private YamlTree(string text, FaultList faults)
    {
        parser = new Parser(new StringReader(text));
        this.faults = faults;
    }

    /// <summary>The root of the file; null, with a fault, when it cannot be parsed.</summary>
    public static FileNode? Read(string text, FaultList faults)
    {
        var tree = new YamlTree(text, faults);
        try
        {
            return tree.Document();
        }
        catch (TooDeepException deep)
        {
            faults.Add(
                FaultCode.TooDeep, deep.Place,
                FormattableString.Invariant($"nested more than {DeepestLevel} levels deep; a project file needs six"));
        }
        catch (YamlException e)
        {
            Tell(text, faults, TabIndent(text, e), PlaceOf(e.Start), Reason(e));
        }
        catch (Exception e) when (
            e is ArgumentException or InvalidOperationException or IndexOutOfRangeException or FormatException or OverflowException)
        {
            // The parser lets a few exceptions of the runtime escape on malformed escapes and directives.
            Tell(text, faults, null, PlaceOf(tree.parser.Current?.Start ?? Mark.Empty), "malformed escape or directive after here");
        }

        return null;
    }

    private static void Tell(string text, FaultList faults, Place? tab, Place place, string reason)
    {
        var cure = tab is { } at ? YamlCure.Tab(text, at) : YamlCure.Find(text, place);
        faults.Add(FaultCode.NotYaml, tab ?? place, "this is not YAML: " + (cure ?? reason));
    }

    /// <summary>The first tab that indents a line, when that is the fault: the parser tells where the mapping around it begins.</summary>
    private static Place? TabIndent(string text, YamlException e)
    {
        if (!e.Message.Contains("tab", StringComparison.Ordinal))
        {
            return null;
        }

        var line = 0;
        foreach (var span in text.AsSpan().EnumerateLines())
        {
            line++;
            var tab = span[..(span.Length - span.TrimStart().Length)].IndexOf('\t');
            if (tab >= 0)
            {
                return new Place(line, tab + 1);
            }
        }

        return null;
    }

    private static string Reason(YamlException e) => e.InnerException is null
        ? e.Message.TrimEnd('.')
        : e.InnerException.Message.TrimEnd('.');

    private static Place PlaceOf(Mark mark) => new(Math.Max(1, (int)mark.Line), Math.Max(1, (int)mark.Column));

    private FileNode Document()
    {
        parser.MoveNext();
        Next();
        if (parser.Current is StreamEnd)
        {
            return new ScalarNode(Place.Start, "", Quoted: false);
        }

        Next();
        var root = Node(1);
        if (parser.Current is DocumentEnd)
        {
            Next();
        }

        if (parser.Current is DocumentStart second)
        {
            faults.Add(
                FaultCode.SecondDocument, PlaceOf(second.Start),
                "a second document begins here; a project file is one document, without ---");
        }

        return root;
    }

    private void Next() => parser.MoveNext();

    // Reads one node and leaves the parser at the event after it.
    private FileNode Node(int level)
    {
        // On some broken files the parser runs out of events inside a mapping instead of complaining.
        var current = parser.Current
            ?? throw new YamlException(latest, latest, "the file ends in the middle of a value that begins here");
        latest = current.Start;
        var place = PlaceOf(current.Start);
        if (level > DeepestLevel)
        {
            throw new TooDeepException(place);
        }

        Next();
        if (current is AnchorAlias alias)
        {
            faults.Add(FaultCode.YamlAlias, place, $"alias *{alias.Value.Value} is not allowed in a project file; write the value out");
            return new BrokenNode(place);
        }

        var refused = Refused(current, place);
        FileNode node = current switch
        {
            Scalar scalar => new ScalarNode(place, scalar.Value, scalar.Style is not ScalarStyle.Plain),
            SequenceStart => List(place, level),
            MappingStart => Map(place, level),
            _ => new BrokenNode(place),
        };
        return refused ? new BrokenNode(place) : node;
    }

    private bool Refused(ParsingEvent current, Place place)
    {
        if (current is not NodeEvent node)
        {
            return false;
        }

        if (!node.Anchor.IsEmpty)
        {
            faults.Add(
                FaultCode.YamlAnchor, place,
                $"anchor &{node.Anchor.Value} is not allowed in a project file; write the value where it is needed");
        }

        if (node.Tag.IsEmpty || (current is Scalar && node.Tag.IsNonSpecific))
        {
            return !node.Anchor.IsEmpty;
        }

        faults.Add(FaultCode.YamlTag, place, $"tag {node.Tag.Value} is not allowed in a project file; take it out");
        return true;
    }

    private ListNode List(Place place, int level)
    {
        var items = ImmutableArray.CreateBuilder<FileNode>();
        while (parser.Current is not SequenceEnd)
        {
            items.Add(Node(level + 1));
        }

        Next();
        return new ListNode(place, items.ToImmutable());
    }

    private MapNode Map(Place place, int level)
    {
        var entries = ImmutableArray.CreateBuilder<MapEntry>();
        var seen = new Dictionary<string, Place>(StringComparer.Ordinal);
        while (parser.Current is not MappingEnd)
        {
            var key = Node(level + 1);
            var value = Node(level + 1);
            if (key is not ScalarNode named)
            {
                faults.Add(FaultCode.KeyIsNoWord, key.Place, $"a key must be a word, not {key.Noun}");
            }
            else if (seen.TryGetValue(named.Text, out var first))
            {
                faults.Add(FaultCode.RepeatedKey, key.Place, FormattableString.Invariant($"key {QuantityReader.Quote(named.Text)} is ")
                    + FormattableString.Invariant($"repeated; it stands in line {first.Line} already"));
            }
            else
            {
                seen.Add(named.Text, key.Place);
                entries.Add(new MapEntry(named.Text, key.Place, value));
            }
        }

        Next();
        return new MapNode(place, entries.ToImmutable());
    }

    private sealed class TooDeepException(Place place) : Exception
    {
        public Place Place { get; } = place;
    }
}
