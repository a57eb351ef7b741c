using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using PdfSharp.Pdf;

namespace Boardwright.Documents.Setting;

/// <summary>The same document gives the same bytes: what the library draws by lot is replaced by marks made from the content.</summary>
/// <remarks>By lot are the six letters before a font's name, the identifiers of the metadata, and those of the trailer. Replacements keep
/// their length, so the file's table of offsets stays true. Compressed streams hold none of them.</remarks>
internal static partial class StableBytes
{
    public static byte[] Of(PdfDocument document)
    {
        using var stream = new MemoryStream();
        document.Save(stream, closeStream: false);

        // Latin-1 maps every byte to one character and back.
        var text = Encoding.Latin1.GetString(stream.ToArray());
        text = FontTag().Replace(text, "AAAAAA+");
        text = MetadataId().Replace(text, "uuid:00000000-0000-0000-0000-000000000000");
        text = TrailerId().Replace(text, "<" + new string('0', 32) + ">");
        var hash = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(text)));
        text = text.Replace("<" + new string('0', 32) + ">", $"<{hash[..32]}>", StringComparison.Ordinal);
        return Encoding.Latin1.GetBytes(text);
    }

    [GeneratedRegex(@"(?<=/)[A-Z]{6}\+(?=Atkinson)")]
    private static partial Regex FontTag();

    [GeneratedRegex("uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")]
    private static partial Regex MetadataId();

    [GeneratedRegex(@"(?<=/ID\[(<[0-9A-F]{32}>)?)<[0-9A-F]{32}>")]
    private static partial Regex TrailerId();
}
