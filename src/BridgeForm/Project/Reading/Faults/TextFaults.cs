namespace BridgeForm.Project.Reading.Faults;

/// <summary>Faults of the text before any key is looked at.</summary>
internal static class TextFaults
{
    public static FaultGroup Group { get; } = new(
        "The text of the file",
        [
            new(
                FaultCode.FileTooLarge,
                "file-too-large",
                "The file has more than a million characters: it is no project file, or no price list.",
                "Name the right file; a project file is a few kilobytes of text."),
            new(
                FaultCode.BadCharacter,
                "bad-character",
                "A control character, or bytes that are not UTF-8.",
                "Save the file as UTF-8 text; type the place anew."),
            new(
                FaultCode.NotYaml,
                "not-yaml",
                "The text does not follow the rules of YAML: a tab that indents, an open quote or bracket, a line indented by too much or "
                    + "too little, a value with a colon and a blank in it, or one that begins with `@`, `%`, a backquote or a bracket.",
                "Indent with spaces, alike within one mapping; close what was opened; put such a value in quotes: "
                    + "`name: 'Bridge: over the brook'`. The fault names the place where reading stopped, and what to write there."),
            new(
                FaultCode.TooDeep,
                "nested-too-deep",
                "Mappings and lists within each other, deeper than any key asks for.",
                "Take levels out; a project file needs six."),
            new(
                FaultCode.SecondDocument,
                "second-document",
                "A line `---` begins a second document.",
                "Keep one bridge a file; take the line and what follows it out."),
            new(
                FaultCode.YamlAlias,
                "yaml-alias",
                "An alias such as `*post`, which stands for a value written elsewhere.",
                "Write the value out."),
            new(
                FaultCode.YamlAnchor,
                "yaml-anchor",
                "An anchor such as `&post`, which names a value for use elsewhere.",
                "Write the value where it is needed."),
            new(FaultCode.YamlTag, "yaml-tag", "A tag such as `!!str`.", "Take it out."),
            new(
                FaultCode.KeyIsNoWord,
                "key-is-no-word",
                "A list or a mapping stands where a key should.",
                "Write the key as a word before its colon."),
            new(
                FaultCode.RepeatedKey,
                "repeated-key",
                "The same key twice in one mapping: only one of the values could be meant.",
                "Take one of them out; the fault names the line of the first."),
            new(
                FaultCode.NotAProject,
                "not-a-project",
                "The file is a single value or a list.",
                "Begin with keys, such as `name: My footbridge`; `bridgeform start` writes a file to begin from."),
        ]);
}
