using Boardwright.Web.Drawings;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Web.Pages;

/// <summary>The time chart of the season, laid out from the plan.</summary>
internal static class PlanPictures
{
    private const int LabelDaysMin = 6; // a shorter stretch has no room for its words

    public static SeasonDrawing Season(YardState state, SeasonSheet sheet) => new(sheet.From, sheet.To, state.Today, [.. sheet.Kilns.Select(row => new KilnRow(row.Kiln, [.. row.Charges.Select(Bar)]))])
    {
        HeatUses = sheet.HeatUses,
        Heat = [.. sheet.HeatShown.Select(day => new HeatWanted(day.Day, day.KilowattsByUse))],
        Boilers = Spans([.. sheet.HeatShown.Select(day => (day.Day, day.GivenKw, day.PerhapsKw))]),
        Shortage = Shortage(sheet.Shortage),
    };

    /// <summary>Heat by day of what the season runs, without the kilns' bars.</summary>
    public static SeasonDrawing Planned(YardState state, SeasonSheet sheet) => Season(state, sheet) with { From = state.Today, Kilns = [] };

    /// <summary>Heat by day without kilns in the picture, all of them held hot.</summary>
    public static SeasonDrawing Heat(YardState state, IReadOnlyList<HeatDay> days) => new(state.Today, days[^1].Date.AddDays(1), state.Today, [])
    {
        HeatUses = ["shop", .. days[0].KilnsHoldKw.Select(kiln => kiln.Kiln)],
        Heat = [.. days.Select(day => new HeatWanted(day.Date, [day.ShopKw, .. day.KilnsHoldKw.Select(kiln => kiln.Kw)]))],
        Boilers = Spans([.. days.Select(day => (day.Date, day.CapacityKw, day.CapacityKw))]),
        Shortage = days.Where(day => day.ShortKw > 0.05).MaxBy(day => day.ShortKw) is { } worst
            ? new(worst.Date, $"{worst.Date:d MMM}, {DayWords.Celsius(worst.OutsideC)}: short {worst.ShortKw:0.0} kW", $"{worst.Date:d MMM}: short {worst.ShortKw:0.0}")
            : null,
    };

    /// <summary>What wood a charge holds, in a few words.</summary>
    public static string Wood(SeasonCharge charge) => string.Join(", ", charge.Stacks.Select(stack => $"{stack.Species.CommonName} {stack.Thickness}").Distinct());

    public static string Name(SeasonCharge charge) => charge.Tag ?? (charge.Stacks.Count == 1 ? charge.Stacks[0].Tag : $"{charge.Stacks[0].Tag} +{charge.Stacks.Count - 1}");

    private static ChargeBar Bar(SeasonCharge charge) => new(
        Name(charge), $"{charge.VolumeBf:#,0} bf", Wood(charge), charge.Stacks[0].Species.CommonName, charge.In.Day(), charge.Out.Day(), charge.OutLate.Day())
    {
        Running = charge.Tag is not null,
        Address = charge.Tag is { } tag ? $"/charges/{tag}" : $"/stacks/{charge.Stacks[0].Tag}",
    };

    // Days of the same capacity drawn as one stretch.
    private static List<BoilerSpan> Spans(List<(DateOnly Day, double Given, double Perhaps)> days)
    {
        var spans = new List<BoilerSpan>();
        foreach (var (day, given, perhaps) in days)
        {
            if (spans.Count > 0 && spans[^1].Kilowatts == given && spans[^1].KilowattsPerhaps == perhaps)
            {
                spans[^1] = spans[^1] with { To = day.AddDays(1) };
            }
            else
            {
                spans.Add(new(day, day.AddDays(1), given, perhaps));
            }
        }

        return [.. spans.Select(span => span.To.DayNumber - span.From.DayNumber < LabelDaysMin ? span : span with { Label = span.KilowattsPerhaps > span.Kilowatts ? $"perhaps {span.KilowattsPerhaps:0} kW, {span.From.Day} to {span.To:d MMM}" : $"{span.Kilowatts:0} kW" })];
    }

    private static HeatShortage? Shortage(SeasonHeat? day) => day is null
        ? null
        : new(day.Day, $"{day.Day:d MMM}, {DayWords.Celsius(day.OutsideC)}: short {day.ShortKw:0.0} kW{(day.OnlyIfLate ? " if not back" : "")}", $"{day.Day:d MMM}: short {day.ShortKw:0.0}");
}
