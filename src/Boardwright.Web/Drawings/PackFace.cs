namespace Boardwright.Web.Drawings;

/// <summary>The end of one stickered pack laid into a cell of a kiln's door: where each board, sticker and bunk lies.</summary>
internal sealed record PackFace(
    string Stack, string Fill, double Left, double Width, double Bottom, double BunkHeight, double StickerHeight, double Middle,
    IReadOnlyList<(double X, double Y, double Width, double Height)> Boards, IReadOnlyList<double> Stickers, IReadOnlyList<double> Bunks)
{
    /// <summary>Usual board widths in inches, in a fixed mixed order: the record of a charge holds no single widths.</summary>
    private static readonly double[] BoardWidths = [6.5, 5.75, 7.25, 5.25, 4.5, 8.5, 5.75, 4.5, 6.5, 7.75, 5, 8, 6];

    public static PackFace Of(KilnLoad load, double left, double floor, double width, double height, bool vacuum)
    {
        var bunk = vacuum ? 0 : 11.0;
        var perInch = height > 120 ? 1 : .6;
        var sticker = vacuum ? .8 : Math.Max(3.2, height / 40);
        var board = Math.Min((height - bunk) / load.Courses - sticker, (vacuum ? 24 : 20) * Math.Max(.6, load.ThicknessInches * perInch));
        var bottom = floor - bunk;
        var boards = new List<(double, double, double, double)>();
        var stickers = new List<double>();
        var scale = width / Math.Max(48, load.WidthInches);
        for (var course = 0; course < load.Courses; course++)
        {
            var y = bottom - ((course + 1) * (board + sticker)) + sticker;
            var x = left;
            for (var index = course * 5; ; index++)
            {
                var wide = BoardWidths[index % BoardWidths.Length] * scale * (load.ThicknessInches > 1.9 ? 1.9 : 1);
                if (x + wide > left + (load.WidthInches * scale) + .1)
                {
                    var rest = left + (load.WidthInches * scale) - x;
                    if (rest > 4 * scale)
                    {
                        boards.Add((x, y, rest, board));
                    }

                    break;
                }

                boards.Add((x, y, wide - 1, board));
                x += wide;
            }

            if (course > 0 && !vacuum)
            {
                stickers.Add(y + board + (sticker / 2));
            }
        }

        var face = load.WidthInches * scale;
        return new(load.Stack, WoodLook.Fill(load.Species), left, face, bottom, bunk, sticker, bottom - (load.Courses * (board + sticker) / 2),
            boards, stickers, bunk > 0 ? [left + (face * .08), left + (face * .36), left + (face * .64), left + (face * .92)] : []);
    }
}
