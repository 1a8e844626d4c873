namespace Floorplan.Cli.Hosting;

/// <summary>
/// A standard stream whose troubles name it. That a reader stopped, as <c>head</c> does, is none: the console's own stream drops what comes
/// after. All else is.
/// </summary>
/// <param name="stream">Null when it is closed.</param>
internal sealed class ToldStream(string name, Stream? stream) : Stream
{
    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

    public static ToldStream Closed(string name) => new(name, null);

    public override int Read(byte[] buffer, int offset, int count)
        => stream is null ? throw new StreamLostException($"{name} is closed") : stream.Read(buffer, offset, count);

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        if (stream is null)
        {
            throw new StreamLostException($"{name} is closed, so what it should say is lost");
        }

        try
        {
            stream.Write(buffer);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new StreamLostException($"{name} cannot be written: {(problem.InnerException ?? problem).Message}");
        }
    }

    public override void Flush() => stream?.Flush();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            stream?.Dispose();
        }

        base.Dispose(disposing);
    }
}
