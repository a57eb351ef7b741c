using System.Buffers.Binary;

namespace Boardwright.Documents.Setting;

/// <summary>Gives digits the face's own tabular figures: all of one width, so that columns stand in line and a 1 has a foot.</summary>
/// <remarks>
/// The library that writes the PDF knows no font features, so the font's character map is pointed at the glyphs its feature "tnum" would
/// choose. In this face they follow the ordinary digits directly, ten glyphs further on.
/// </remarks>
internal static class TabularFigures
{
    private const int GlyphsFurther = 10;
    private const int SegmentMapFormat = 4;

    /// <exception cref="InvalidOperationException">The font's map is not of the known form: another version of the face.</exception>
    public static byte[] Choose(byte[] font)
    {
        var map = Table(font, "cmap"u8);

        // Several encodings may share one map: it is changed once.
        var maps = Enumerable.Range(0, Short(font, map + 2)).Select(i => (int)BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(map + 8 + (8 * i))));
        var changed = maps.Distinct().Sum(offset => PointDigits(font, map + offset));
        return changed > 0 ? font : throw new InvalidOperationException("The font has no separate run of digits in its character map.");
    }

    private static int Table(byte[] font, ReadOnlySpan<byte> tag)
    {
        for (var entry = 12; entry < 12 + (16 * Short(font, 4)); entry += 16)
        {
            if (font.AsSpan(entry, 4).SequenceEqual(tag))
                return (int)BinaryPrimitives.ReadUInt32BigEndian(font.AsSpan(entry + 8));
        }

        throw new InvalidOperationException("The font has no character map.");
    }

    /// <summary>In a segment map: last characters, a pad, first characters, glyph offsets; each a list of two-byte numbers.</summary>
    private static int PointDigits(byte[] font, int map)
    {
        if (Short(font, map) != SegmentMapFormat)
            return 0;

        var bytes = Short(font, map + 6);
        for (var at = 0; at < bytes; at += 2)
        {
            var (last, first) = (Short(font, map + 14 + at), Short(font, map + 16 + bytes + at));
            if (first != '0' || last != '9')
                continue;

            var offset = font.AsSpan(map + 16 + (2 * bytes) + at);
            BinaryPrimitives.WriteUInt16BigEndian(offset, (ushort)(BinaryPrimitives.ReadUInt16BigEndian(offset) + GlyphsFurther));
            return 1;
        }

        return 0;
    }

    private static int Short(byte[] font, int at) => BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(at));
}
