using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One log for a person: what it is, how it is, what next.</summary>
public sealed record LogSheet(Log Log, string Title, string Under, IReadOnlyList<Traced> Figures, (string First, string Text)? Caution, string NextDo, string NextWhy)
{
    public static Outcome<LogSheet> Of(YardState state, string tag)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Logs.TryGetValue(tag, out var log))
            return new Refusal("log", tag, $"a log of the book, such as {string.Join(", ", state.Logs.Keys.Take(5))}");

        List<Traced?> figures = [Left(state, log), Scale(state, log), Weight(state, log), LogSeenWords.Taper(log), Worth(state, log), Paid(state, log)];
        var (nextDo, nextWhy) = Next(state, log);
        return new LogSheet(log, $"Log {log.Tag}, {(log.Proven ? log.Species.CommonName : "unproven species")}", UnderTitle(log), [.. figures.OfType<Traced>()], CautionFor(log), nextDo, nextWhy);
    }

    /// <summary>What the detector said.</summary>
    public static string Scan(Log log) => log.MetalScan switch
    {
        MetalScan.Clear => "scanned clear of metal",
        MetalScan.HitsDugOut => $"{Hits(log)} dug out",
        MetalScan.HitsNotDug => $"{Hits(log)} not dug out",
        MetalScan.FenceLineNotScanned => "from a fence line, not scanned",
        _ => "not scanned",
    };

    private static string Hits(Log log) => log.MetalHits == 1 ? "1 piece of metal" : $"{log.MetalHits} pieces of metal";

    private static string UnderTitle(Log log)
    {
        var small = log.SmallEndA == log.SmallEndB ? $"{log.SmallEndA.Inches:0.#} in" : $"{log.SmallEndA.Inches:0.#} × {log.SmallEndB.Inches:0.#} in";
        var owner = log.Owner == "mill" ? "" : $" Wood of {log.Owner}, kept apart.";
        var defect = log.Defect is null or "none" or "" ? "" : $" Noted: {log.Defect}.";
        return string.Create(CultureInfo.InvariantCulture, $"{small} inside bark at the small end, {log.LargeEnd.Inches:0.#} in at the large, {log.ScaleLength.Feet:0.#} ft scale ({FeetInches(log.ActualLength)}). From {log.Source}, in since {log.ReceivedAt:d MMMM}. {char.ToUpperInvariant(Scan(log)[0])}{Scan(log)[1..]}, ends {(log.EndCoated ? "coated" : "not coated")}.{(log.Radii.Count > 0 ? $" Measured by {log.Radii[0].RadiiMm.Count} radii at {log.Radii.Count} places." : "")}{LogSeenWords.Of(log)}{defect}{owner}");
    }

    private static string FeetInches(Length length)
    {
        var inches = (int)Math.Round(length.Inches);
        return $"{inches / 12} ft {inches % 12} in";
    }

    private static Traced? Left(YardState state, Log log)
    {
        if (log.IsSawn || YardLog.DaysLeft(state, log) is not var (clock, since, mean))
            return null;

        var words = YardLog.Words(clock.What);
        return new("Days left", clock.Days <= 0 ? "0" : Text(clock.Days, "0"), "days", clock.Days <= 0 ? $"{words} may have begun" : $"before {words.ToLowerInvariant()}, {since} days here")
        {
            Method = "log-worth",
            Source = "common practice, a table of the house (no printed source)",
            Inputs = [("stain group", log.Species.StainGroup ?? "-"), ("since", Text(since, "0") + " days"), ("mean outside since", Text(mean, "0.0") + " °C"), ("ends", log.EndCoated ? "coated" : "not coated")],
        };
    }

    private static Traced? Scale(YardState state, Log log) => YardLog.Scale(log) is Outcome<ScaledLog>.Done({ Gross: { } gross } scaled) && YardLog.Scale(log, LogRule.Doyle) is Outcome<ScaledLog>.Done({ Gross: { } doyle })
        ? new("Log scale", Text(gross.Count, "0"), "bf", $"International 1/4, gross. {Net(state, log)}Doyle: {doyle.Count:0}")
        {
            Method = "log-scale",
            Source = "International 1/4-inch rule, Michigan Compiled Laws 290.401",
            Inputs = [("scaling diameter", Text(log.ScalingDiameter.Inches, "0.#") + " in, mean of two"), ("length without trim", Text(log.ScaleLength.Feet, "0.#") + " ft"), ("not rounded", Text(scaled.GrossUnrounded ?? 0.0, "0.0") + " bf"), ("noted", log.Defect ?? "none")],
        }
        : null;

    // Only where something is taken off.
    private static string Net(YardState state, Log log) => YardLog.Rules(state, log).Rules.FirstOrDefault(row => row.Rule == LogRule.InternationalQuarter)?.Scaled is { Deductions.Count: > 0, Net: { } net } ? $"Net of sweep, rot and splits {net.Count:0}. " : "";

    private static Traced? Weight(YardState state, Log log)
    {
        if (YardLog.Weight(log) is not Outcome<Mass>.Done(var mass))
            return null;

        var lift = LogLift.Of(state, log.Species, mass, YardLog.Volume(log)!.Value, log.ActualLength);
        return new("Weighs about", Text(mass.Kilograms, "#,0"), "kg", $"{Text(mass.Pounds, "#,0")} lb green, without bark; {lift.Words}")
        {
            Method = "log-volume-and-weight",
            Source = $"{YardLog.SolidBy(log)}; green weight by FIADB REF_SPECIES, USDA Forest Service",
            Inputs = [("small end", Text(log.ScalingDiameter.Inches, "0.#") + " in"), ("large end", Text(log.LargeEnd.Inches, "0.#") + " in"), ("whole length", FeetInches(log.ActualLength)), ("green moisture", Text(log.Species.GreenMoistureAverage?.Percent ?? 0.0, "0") + " %"), ("with bark, a tenth over", Text(lift.HeavyKg, "#,0") + " kg; decides what lifts it"), ("tie-downs and axles", "your local rules, 49 CFR 393.116 for logs")],
        };
    }

    private static Traced? Worth(YardState state, Log log) => !log.IsSawn && log.Owner == "mill" && YardLog.Worth(state, log) is Outcome<LogWorth>.Done(var worth) && LogYield.SoldPerScale(state, log.Species.CommonName) is var sold
        ? new("Walk away above", Text(worth.Money, "#,0"), "money", $"lying here, before profit; {Text((worth with { SoldPerScale = sold.Low }).Money, "#,0")} to {Text((worth with { SoldPerScale = sold.High }).Money, "#,0")} in 8 logs of 10. At most {Text(Math.Max(0.0, worth.MostToPay(LogReckoning.MarginOf(state))), "#,0")} leaves the wanted {Text(LogReckoning.MarginOf(state).Percent, "0.#")} %")
        {
            Method = "log-worth",
            Source = "the house's prices, costs and record",
            Inputs =
            [
                ("scale, not rounded", Text(worth.Scale.Count, "0.0") + " bf International"), ("sold per bf scaled", $"{Text(worth.SoldPerScale, "0.00")}, {Text(sold.Low, "0.00")} to {Text(sold.High, "0.00")} in 8 logs of 10"), ("price, dry 1C and better", Text(worth.PriceMoneyPerBf, "0.00") + " a bf"),
                .. YardLog.Costs(state).Select(cost => (cost.What, Text(cost.Money, "0.00") + " a bf")),
                ("metal", $"{Text(worth.StrikesExpected, "0.00")} strikes × {Text(worth.StrikeMoney, "0")}"),
            ],
        }
        : null;

    private static Traced? Paid(YardState state, Log log) => log.PaidMoney is not { } paid ? null
        : new("Paid", paid.ToString("0.00", CultureInfo.InvariantCulture), "money", $"what was given for it, from {log.Source}; the house’s rule of paying by source gives {YardLog.PriceBySource(state, log).ToString("0.00", CultureInfo.InvariantCulture)}")
        {
            Method = "log-worth",
            Source = $"entry {log.History[0]} of the book",
            Inputs = [("source", log.Source), ("owner", log.Owner)],
        };

    private static (string First, string Text)? CautionFor(Log log) =>
        log.IsSawn ? null
        : log.MetalScan == MetalScan.HitsNotDug ? ("Metal.", $"{Hits(log)} still in it. Do not open it before they are out and it is scanned clear.")
        : log.Seen.MetalMarks && log.MetalScan != MetalScan.Clear ? ("Marks of metal.", "Scan it before the first cut and after every few: blue-black stain means metal in the next pass.")
        : log.MetalScan is MetalScan.NotScanned or MetalScan.FenceLineNotScanned ? ("Not scanned.", "Scan it before the first cut, and again after every few: a deep nail may show no stain.")
        : !log.Proven ? ("Tag lost.", $"It may be {string.Join(" or ", log.ConfusedWith)}. No price, no plan and no promise until it is settled.")
        : ("Look at the butt end first.", "The cuts assume a round log with the heart in the middle. If the pith is more than an inch off, move it here first. Chock the log; nobody in the plane of the blade.");

    private static (string Do, string Why) Next(YardState state, Log log)
    {
        if (log.IsSawn)
            return ($"See {string.Join(", ", log.Into.Select(into => into.Stack))}.", $"It was opened on {log.SawnAt:d MMMM}: {log.SawnBf:0} bf.");
        if (log.MetalScan == MetalScan.HitsNotDug)
            return ("Dig the metal out and scan it again.", "A strike costs a blade and half an hour of two people.");
        if (log.MetalScan is MetalScan.NotScanned or MetalScan.FenceLineNotScanned)
            return ("Scan it.", "It was not scanned when it came in.");
        if (!log.Proven)
            return ("Settle the species.", "Look at the end grain under a lens beside the pictures of the woods it may be.");

        var wanted = LogCutting.OpenLines(state, log).FirstOrDefault();
        var order = wanted is null ? null : state.Orders.Values.First(one => one.Lines.Any(line => line.Asked == wanted));
        var why = order is null ? $"Planned for {log.PlannedFor ?? "nothing yet"}." : $"Planned for {log.PlannedFor ?? "nothing yet"}. {order.Customer} waits for {wanted!.Goods} ({order.Tag}, due {DayWords.Of(wanted.DueOn, state.Today)}), with its own stack named.";
        return YardLog.DaysLeft(state, log) is var (clock, _, _) && clock.Days <= 7
            ? ($"Open it {(clock.Days <= 0 ? "now" : $"within {clock.Days} days")}.", $"{YardLog.Words(clock.What)} {(clock.Days <= 0 ? "may have begun" : "is next")}. {why}")
            : ("Open it in its turn.", why);
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
