using Boardwright.Drying;
using Boardwright.Web.Drawings;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Pages;

/// <summary>The pictures of a stack, laid out from its card and its forecast.</summary>
internal static class StackPictures
{
    private const double UsualLengthFeet = 10.0;
    private const double PileWidthInches = 48.0;
    private const int CoursesMost = 26;
    private const int PointsMost = 150;
    private const int DaysAheadLeast = 80;
    private const int DaysAheadMost = 400;

    /// <summary>The stack from the side. Which board lies where is not on record: lengths vary between the shortest and the longest, always in the same order.</summary>
    public static StackSideDrawing Side(YardState state, Stack stack)
    {
        var slabs = stack.Product is Product.Slabs or Product.Boule or Product.Slab;
        var width = stack.PieceWidth?.Inches ?? (slabs ? 20.0 : 6.0);
        var across = Math.Max(1, (int)(PileWidthInches / width));
        var courses = Math.Clamp(((stack.Pieces ?? 60) + across - 1) / across, 1, CoursesMost);
        var (shortest, longest) = (stack.ShortestPiece?.Feet ?? UsualLengthFeet, stack.LongestPiece?.Feet ?? UsualLengthFeet);
        var lengths = Enumerable.Range(0, courses).Select(course => longest - ((longest - shortest) * Math.Max(0, (course * 7 % 5) - 2) / 2.0)).ToList();
        return new(stack.Tag, stack.Species.CommonName, lengths, stack.SawnThickness?.Inches ?? stack.Thickness.Inches, Cover(state, stack.Place)) { LiveEdge = slabs, Place = stack.Place };
    }

    /// <summary>The drying curve with its band and readings.</summary>
    public static DryingCurveDrawing Curve(StackForecast drying, DateTime now)
    {
        var late = drying.Late ?? drying.Likely ?? drying.Today;
        var end = drying.Today.AddDays(Math.Clamp(late.DayNumber + 14 - drying.Today.DayNumber, DaysAheadLeast, DaysAheadMost));
        var ahead = drying.Ahead.TakeWhile(day => day.Date <= end).ToList();
        return new($"stack {drying.Stack.Tag}", Start(drying.Past[0].Date), Start(ahead[^1].Date), now)
        {
            Past = [Points(drying.Past)],
            Ahead = Points(ahead),
            Air = [.. drying.WeeklyAir.Where(week => week.Day <= end).Select(week => (Start(week.Day), week.Percent))],
            Readings = [.. drying.Stack.Readings.Where(reading => reading.Mean is not null && reading.At >= Start(drying.Past[0].Date))
                .Select(reading => new Drawings.MoistureReading(reading.At, reading.Mean!.Value.Percent, reading.Raw?.Percent))],
            TargetPercent = drying.Target.Percent,
        };
    }

    private static List<MoisturePoint> Points(IReadOnlyList<DryingDay> days) =>
        [.. Thinned(days).Select(day => new MoisturePoint(Start(day.Date), day.P10.Percent, day.P50.Percent, day.P90.Percent))];

    private static IEnumerable<DryingDay> Thinned(IReadOnlyList<DryingDay> days)
    {
        var every = Math.Max(1, days.Count / PointsMost);
        return days.Where((_, index) => index % every == 0 || index == days.Count - 1);
    }

    private static DateTime Start(DateOnly day) => day.ToDateTime(TimeOnly.MinValue);

    private static StackCover Cover(YardState state, string place) => state.Places.GetValueOrDefault(place)?.Type switch
    {
        PlaceKind.Row => StackCover.PileCover,
        null => StackCover.Open,
        _ => StackCover.Shed,
    };
}
