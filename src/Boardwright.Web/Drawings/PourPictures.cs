using Boardwright.Casting.Cure;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Drawings;

/// <summary>A pour of the book as its mould from above and as its cure over the hours.</summary>
public static class PourPictures
{
    private const int PointsMost = 160;
    private const double HoursMost = 240.0;

    public static MouldDrawing Mould(PourSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var plan = sheet.Pour.Plan;
        return new(plan.Pour, Shape(plan.Mould), plan.Pieces.Count > 0 ? plan.Pieces[0].Species : "wood",
            [.. plan.Pieces.Select((piece, index) => new MouldPiece(piece.LengthMm, piece.WidthsMm, index % 2 == 0, $"{index + 1}"))])
        {
            ResinWords = $"{sheet.Volume.Volume.Litres:0.00} L, {plan.DepthMm:0.#} mm deep",
        };
    }

    public static CureDrawing? Cure(PourSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        if (sheet.WillNotCure || sheet.Cure.Model is not { } model)
            return null;
        var hours = Math.Min(HoursMost, Math.Max(sheet.Cure.PlannedHour, model.DemouldEdgeHour ?? 0.0) + 12.0);
        var edge = model.Edge ?? model.Centre;
        var resin = model.Section.Resin;
        return new($"pour {sheet.Pour.Tag}", hours,
        [
            new("centre", Points(model.Centre, hours, point => (point.CentreCelsius, point.CentreConversion))),
            new(model.EdgeDepth is { } thin ? $"edge, {thin.Millimetres:0.#} mm" : "top face", Points(edge, hours, point => (model.Edge is null ? point.TopCelsius : point.CentreCelsius, point.LeastConversion))),
        ])
        {
            Air = Shop(sheet.Cure, hours),
            DemouldHour = sheet.Cure.PlannedHour <= hours ? sheet.Cure.PlannedHour : null,
            HardShare = resin.DemouldConversion,
            GelShare = resin.GelConversion,
            CelsiusMax = model.Centre.PeakCelsius > resin.PeakCelsiusMax - 15.0 ? resin.PeakCelsiusMax : null,
        };
    }

    // The curve has a point each half hour until the run ends; past that the last one holds.
    private static List<CurePoint> Points(CureRun run, double hours, Func<Casting.Cure.CurePoint, (double Celsius, double Share)> of)
    {
        var step = Math.Max(0.5, hours / PointsMost);
        return [.. Enumerable.Range(0, (int)(hours / step) + 1).Select(index => index * step).Select(hour => (hour, of(run.At(hour)))).Select(pair => new CurePoint(pair.hour, pair.Item2.Celsius, pair.Item2.Share))];
    }

    private static List<(double, double)> Shop(PourCure cure, double hours) =>
        [.. cure.Shop.Points.Where(point => point.Hour < hours), (hours, cure.Shop.Points[^1].Celsius)];

    private static MouldShape Shape(Mould mould) => mould.Shape switch
    {
        Yard.Book.Facts.MouldShape.Rectangle => MouldShape.Rectangle(mould.LengthMm ?? 1.0, mould.WidthMm ?? 1.0),
        Yard.Book.Facts.MouldShape.Hexagon => MouldShape.Hexagon(mould.SideMm ?? 1.0),
        _ => MouldShape.Circle(mould.DiameterMm ?? 1.0),
    };
}
