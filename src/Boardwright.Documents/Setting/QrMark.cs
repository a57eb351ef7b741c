using QRCoder;

namespace Boardwright.Documents.Setting;

/// <summary>A QR code as filled squares: sharp at any size, and readable with a quarter of it torn off or muddy.</summary>
internal static class QrMark
{
    /// <summary>Dark modules by row and column, the quiet zone of four modules included.</summary>
    public static IReadOnlyList<System.Collections.BitArray> Modules(string text)
    {
        using var code = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.Q, forceUtf8: true);
        return [.. code.ModuleMatrix];
    }

    public static void Draw(Sheet sheet, string text, double leftMm, double topMm, double sizeMm)
    {
        var modules = Modules(text);
        var pitch = sizeMm / modules.Count;
        for (var row = 0; row < modules.Count; row++)
        {
            // Runs of dark modules are one rectangle: no hairline gaps between neighbours when printed.
            for (var start = 0; start < modules.Count; start++)
            {
                var end = start;
                while (end < modules.Count && modules[row][end])
                    end++;

                if (end > start)
                    sheet.Fill(leftMm + (start * pitch), topMm + (row * pitch), (end - start) * pitch, pitch);

                start = end;
            }
        }
    }
}
