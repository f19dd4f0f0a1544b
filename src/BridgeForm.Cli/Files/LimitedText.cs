using System.Text;
using BridgeForm.Project;

namespace BridgeForm.Cli.Files;

/// <summary>Text from a file, a pipe or a device, which need not know how long it is, nor ever end.</summary>
internal static class LimitedText
{
    /// <summary>The text, UTF-8 or as its byte order mark says; null when there is more of it than a project file may hold.</summary>
    public static string? Read(string path)
    {
        var bytes = new byte[ProjectKeys.LargestFile + 1];
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        var length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        if (length > ProjectKeys.LargestFile)
        {
            return null;
        }

        using var reader = new StreamReader(new MemoryStream(bytes, 0, length), Encoding.UTF8, detectEncodingFromByteOrderMarks: true);
        return reader.ReadToEnd();
    }
}
