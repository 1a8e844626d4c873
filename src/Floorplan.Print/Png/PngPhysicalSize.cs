using System.Buffers.Binary;

namespace Floorplan.Print.Png;

/// <summary>Adds the pHYs chunk, pixels to the metre, which the picture library does not write (PNG, third edition, 11.3.4.3).</summary>
internal static class PngPhysicalSize
{
    /// <summary>The signature and the header chunk, after which it may stand.</summary>
    private const int HeaderEnd = 8 + 25;

    private const double InchesPerMetre = 1000 / 25.4;

    public static byte[] Add(byte[] png, int dpi)
    {
        Span<byte> chunk = stackalloc byte[21];
        int perMetre = (int)Math.Round(dpi * InchesPerMetre);
        BinaryPrimitives.WriteInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk[4..]);
        BinaryPrimitives.WriteInt32BigEndian(chunk[8..], perMetre);
        BinaryPrimitives.WriteInt32BigEndian(chunk[12..], perMetre);
        chunk[16] = 1;
        BinaryPrimitives.WriteUInt32BigEndian(chunk[17..], Crc(chunk[4..17]));
        return [.. png.AsSpan(0, HeaderEnd), .. chunk, .. png.AsSpan(HeaderEnd)];
    }

    /// <summary>The cyclic redundancy code of PNG, Annex D.</summary>
    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        uint crc = 0xFFFFFFFF;
        foreach (byte b in bytes)
        {
            crc ^= b;
            for (int bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) != 0 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
            }
        }

        return ~crc;
    }
}
