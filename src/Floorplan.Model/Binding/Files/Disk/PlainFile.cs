using Floorplan.Language.Text;

namespace Floorplan.Model.Binding.Files.Disk;

/// <summary>
/// The one reader of files that people write, plans and the files that they use alike: plain files only, no larger than a bound, and
/// UTF-8 text to the last byte.
/// </summary>
public static class PlainFile
{
    /// <summary>What reading gave: the bytes and their text, or a sentence that says why there is none.</summary>
    /// <param name="HasMark">It starts with a byte order mark, which is in the bytes and not in the text.</param>
    public sealed record Reading(byte[] Bytes, string? Text, bool HasMark, string? Problem);

    /// <summary>
    /// Reads a file that is there. Pipes and devices are never opened, since that could wait for ever; where the system does not say what
    /// a file is, it is opened. Throws what opening a file throws.
    /// </summary>
    /// <param name="megabytes">The most that is read.</param>
    public static Reading Read(string path, int megabytes)
    {
        if (FileFacts.Of(path) is { IsPlain: false })
        {
            return Refuse("this is a pipe or a device, not a plain file");
        }

        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return Read(stream, megabytes);
    }

    /// <inheritdoc cref="Read(string, int)"/>
    public static Reading Read(Stream stream, int megabytes)
    {
        int most = megabytes << 20;
        byte[] bytes = AtMost(stream, most + 1);
        if (bytes.Length > most)
        {
            return Refuse(FormattableString.Invariant($"more than {megabytes} MB; a plan is far smaller, so this is some other file"));
        }

        var (text, hasMark, problem) = Utf8Text.Decode(bytes);
        return new Reading(bytes, text, hasMark, problem);
    }

    private static byte[] AtMost(Stream stream, int most)
    {
        using var held = new MemoryStream();
        byte[] buffer = new byte[1 << 16];
        int read;
        while (held.Length < most && (read = stream.Read(buffer)) > 0)
        {
            held.Write(buffer, 0, read);
        }

        return held.ToArray();
    }

    private static Reading Refuse(string problem) => new([], null, false, problem);
}
