using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>A tree as its caller describes it, as typed. A bare girth or diameter is in inches, a length in feet, a distance in miles.</summary>
/// <param name="Girth">Around the bark at breast height; or</param>
/// <param name="SmallEnd">small end inside bark, one figure or two: 24 to 28.</param>
/// <param name="Metal">One of <see cref="LogOffer.Risks"/>.</param>
/// <param name="Hours">Of driving and loading; empty for the usual.</param>
/// <param name="DiameterUnit">Of a bare girth or small end: in or cm.</param>
/// <param name="LengthUnit">Of a bare length: ft or m.</param>
public sealed record TreeTyped(string? Species, string? Girth, string? SmallEnd, string? Length, string? Miles, string? Hours, string? Metal, string DiameterUnit = "in", string LengthUnit = "ft");

/// <summary>What a tree on the telephone is worth before profit, with its spread: the figure to walk away at, and what to say.</summary>
public sealed record LogOffer
{
    private const double MilesPerHour = 44.0;   // of a loaded trailer on country roads, common practice
    private const double LoadHours = 0.5;
    private const double TaperInchesPerFoot = 0.125;
    private const double UsualFeet = 8.0;   // of a log from a yard tree: as far as the first limb of most, common practice

    /// <summary>How likely metal is, as the caller describes the place: key, words, setting with the strikes expected.</summary>
    public static IReadOnlyList<(string Key, string Words, string Setting)> Risks { get; } =
    [
        ("yard", "garden, street, beside a fence", "strikes_fence_line"), ("woods", "woods or field, nothing known", "strikes_not_scanned"), ("clear", "scanned clear", "strikes_clear"),
    ];

    public required Species Species { get; init; }

    public required Length Low { get; init; }

    public required Length Likely { get; init; }

    public required Length High { get; init; }

    public required Length LogLength { get; init; }

    /// <summary>Worth before profit at the three sizes, smallest first.</summary>
    public required IReadOnlyList<LogWorth> Worth { get; init; }

    public required IReadOnlyList<Traced> Figures { get; init; }

    public required string NextDo { get; init; }

    public required string NextWhy { get; init; }

    /// <summary>Words for the caller.</summary>
    public required string Say { get; init; }

    /// <summary>The tree as a call keeps it.</summary>
    public required TreeOffered Tree { get; init; }

    /// <summary>What was typed, of a call in the book; null when it tells of no tree.</summary>
    public static TreeTyped? Of(YardState state, long entry)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Calls.Find(call => call.Entry == entry)?.Fact.Tree is not { } tree ? null : new TreeTyped(
            tree.Species, tree.GirthMm is { } girth ? Text($"{girth / 25.4:0.#}") : null, tree is { SmallEndLowMm: { } low, SmallEndHighMm: { } high } ? Text($"{low / 25.4:0.#} to {high / 25.4:0.#}") : null,
            tree.LogLengthM is { } length ? SizeTyped.Plain(Length.FromMetres(length)) : null, tree.RoadMiles is { } miles ? Text($"{miles:0.#}") : null, null, tree.MetalNearby ? "yard" : "woods");
    }

    /// <summary>Works it out.</summary>
    public static Outcome<LogOffer> Work(YardState state, TreeTyped typed)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(typed);
        var read = new Typed();
        var miles = read.Number("Road miles", string.IsNullOrWhiteSpace(typed.Miles) ? "0" : typed.Miles, 0.0, 500.0, "0 to 500 miles, one way");
        var hours = string.IsNullOrWhiteSpace(typed.Hours) ? (miles > 0.0 ? (2.0 * miles / MilesPerHour) + LoadHours : 0.0) : read.Number("Hours", typed.Hours, 0.0, 24.0, "0 to 24 hours of driving and loading");
        var risk = Risks.FirstOrDefault(one => one.Key == (typed.Metal ?? "yard"));
        if (risk.Key is null)
            read.Refuse("Metal", typed.Metal, string.Join(", ", Risks.Select(one => one.Key)));
        if (read.Refusals.Count > 0)
            return new Outcome<LogOffer>.Refused(read.Refusals);

        return SpeciesTable.Find("Species", typed.Species ?? "").Then(species => SizeTyped.Along("Log length", string.IsNullOrWhiteSpace(typed.Length) ? Text($"{UsualFeet}ft") : typed.Length, typed.LengthUnit, SizeTyped.Longest(state)).Then(length => length.Length.Feet is >= 4.0 - 1e-9 and <= 20.0 + 1e-9
            ? SizesOf(state, typed, length.Length).Then(sizes => Make(state, species, sizes, length.Length, string.IsNullOrWhiteSpace(typed.Miles) ? null : miles, hours, risk, typed))
            : new Refusal("Log length", typed.Length ?? "", "4 to 20 ft, without trim")));
    }

    /// <summary>Writes the call down with its tree.</summary>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, TreeTyped typed, string? caller, string? said, string? felledBy, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        var (who, text) = (read.Named("Who rang", caller, "a name, or who they are"), read.Named("What they said", said, "in their words"));
        var person = read.By(book.State, by);
        return read.Then(() => Work(book.State, typed).Then(offer =>
            key.Write(book, person, new PhoneCallTaken(who, text, null, offer.Tree with { FelledBy = string.IsNullOrWhiteSpace(felledBy) ? null : felledBy.Trim() }))));
    }

    // What the caller measured decides: a small end somebody looked at comes before the girth.
    private static Outcome<(Length Low, Length Likely, Length High, string Words)> SizesOf(YardState state, TreeTyped typed, Length length)
    {
        if (!string.IsNullOrWhiteSpace(typed.SmallEnd))
        {
            var parts = typed.SmallEnd.Split([" to ", "-", "–"], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            return End(state, parts.FirstOrDefault(), typed.DiameterUnit).Then(low => End(state, parts.LastOrDefault(), typed.DiameterUnit).Then<(Length, Length, Length, string)>(high => parts.Length <= 2 && high >= low && low.Inches >= 4.0 && high.Inches <= 80.0
                ? (low, Length.FromInches((low.Inches + high.Inches) / 2.0), high, "as the caller guesses it, inside bark")
                : new Refusal("Small end", typed.SmallEnd, "one figure or two, the smaller first, 4 to 80 in: 24 to 28")));
        }

        return Girth(typed.Girth, typed.DiameterUnit).Then(girth => StandingTree.Of(girth, length).Then<(Length, Length, Length, string)>(tree => (tree.Low, tree.Likely, tree.High, Text($"from {girth.Inches:0.#} in around, {tree.OverBark.Inches:0.#} in through over bark"))));
    }

    // A bare figure past the mill's throat is mostly centimetres; a tree that is too large for it says so with its unit.
    private static Outcome<Length> End(YardState state, string? text, string unit) =>
        Read.Number("", text ?? "") is Outcome<double>.Done && state.Yard is { ThroatMm: var throat } && SizeTyped.Across("Small end", text, unit, Length.FromMillimetres(throat), "the throat of the mill; a larger one with its unit") is Outcome<SizeTyped>.Refused { Reasons: [{ Meant.Count: > 0 } asked] }
            ? asked with { Meant = [.. asked.Meant, new($"{text} {unit}", $"{text} = {text}{unit}")] } : Bare("Small end", text, unit);

    private static Outcome<Length> Girth(string? text, string unit) => string.IsNullOrWhiteSpace(text) || text.Trim()[0] is '-' or '−'
        ? new Refusal("Girth", text ?? "", "20 to 300 in around the trunk at breast height, or the small end of the log")
        : Bare("Girth", text, unit);

    private static Outcome<Length> Bare(string what, string? text, string unit) =>
        Read.Length(what, string.IsNullOrWhiteSpace(text) ? "" : char.IsAsciiDigit(text.Trim()[^1]) ? text.Trim() + unit : text.Trim());

    private static Outcome<LogOffer> Make(YardState state, Species species, (Length Low, Length Likely, Length High, string Words) sizes, Length length, double? miles, double hours, (string Key, string Words, string Setting) risk, TreeTyped typed)
    {
        Outcome<LogWorth> At(Length smallEnd) => YardLog.Offered(state, species.CommonName, smallEnd, length, miles ?? 0.0, hours, risk.Setting);
        return At(sizes.Low).Then(low => At(sizes.Likely).Then(likely => At(sizes.High).Then<LogOffer>(high =>
        {
            var girth = Bare("Girth", typed.Girth, typed.DiameterUnit) is Outcome<Length>.Done(var around) ? around : (Length?)null;
            var (act, why, say) = Advise(low, likely, high, LogReckoning.MarginOf(state), miles is not null || hours > 0.0);
            return new LogOffer
            {
                Species = species,
                Low = sizes.Low,
                Likely = sizes.Likely,
                High = sizes.High,
                LogLength = length,
                Worth = [low, likely, high],
                Figures = [.. FiguresOf(state, species, sizes, length, typed.Length, miles, hours, risk, low, likely, high)],
                NextDo = act,
                NextWhy = why,
                Say = say,
                Tree = new(species.CommonName, girth?.Millimetres, null, miles, length.Metres, sizes.Low.Millimetres, sizes.High.Millimetres, risk.Key == "yard"),
            };
        })));
    }

    private static (string Do, string Why, string Say) Advise(LogWorth low, LogWorth likely, LogWorth high, Share margin, bool hauled) =>
        high.Money <= 0.0 ? ("Decline, or name a fee.", Text($"Even the best log of it costs {-high.Money:#,0} more than it brings: {Way(likely, hauled)}, metal {likely.MetalMoney:#,0}."),
            Text($"“Thank you for thinking of us. One log of that size does not pay for the way; for a fee of about {Math.Ceiling(-likely.Money / 10.0) * 10.0:#,0} we can haul it away, or a tree service can take it.”"))
        : likely.Money <= 0.0 ? ("Take it only when passing by.", Text($"Likely it costs {-likely.Money:#,0} more than it brings; the best log of it brings {high.Money:#,0}."), "“We can take it free when we are nearby. We pay nothing for it, and whoever fells it does so at their own risk.”")
        : (!hauled ? "Ask how many miles it is before you name a price." : Text($"Offer to collect it free{(Token(low, margin) is { } pay ? Text($", at most pay {pay:#,0}") : "")}; measure before you drive."), Text($"Walk away above {likely.Money:#,0}{(Same(low, high) ? "" : Text($"; if it is as small as it may be, above {Math.Max(0.0, low.Money):#,0}"))}.{(hauled ? "" : " The way is not in it.")}"),
            Text($"“We would collect it free{(hauled && Token(low, margin) is { } token ? Text($", or pay {token:#,0}") : "")} once it is down and measured. We need it in writing that the tree is yours, where metal may be, and who pays for a blade.”"));

    // Half of what the smallest log of it would bring (common practice, no source), and never into the wanted margin.
    private static double? Token(LogWorth low, Share margin) => Math.Floor(Math.Min(low.Money / 2.0, low.MostToPay(margin)) / 10.0) * 10.0 is >= 10.0 and var pay ? pay : null;

    private static string Way(LogWorth likely, bool hauled) => hauled ? Text($"haul {likely.HaulMoney:#,0}") : "no haul in it yet";

    private static bool Same(LogWorth low, LogWorth high) => Text($"{low.Money:0}") == Text($"{high.Money:0}");

    // A range only where its ends differ as they are printed.
    private static string Range(double low, double high, string format) =>
        low.ToString(format, CultureInfo.InvariantCulture) is var from && high.ToString(format, CultureInfo.InvariantCulture) is var to && from == to ? from : $"{from} to {to}";

    private static IEnumerable<Traced> FiguresOf(YardState state, Species species, (Length Low, Length Likely, Length High, string Words) sizes, Length length, string? said, double? miles, double hours, (string Key, string Words, string Setting) risk, LogWorth low, LogWorth likely, LogWorth high)
    {
        yield return new("Walk away above", Text($"{likely.Money:#,0}"), "money", Text($"as {species.CommonName}: what its dry boards bring less every cost{(likely.HaulMoney > 0.0 ? ", haul and metal in it" : "; no haul counted")}{(Same(low, high) ? "" : Text($"; {Range(low.Money, high.Money, "#,0")} by its size"))}, before profit"))
        {
            Method = "log-worth",
            Source = "the house’s prices, costs and record",
            Inputs =
            [
                ("small end, inside bark", Text($"{Range(sizes.Low.Inches, sizes.High.Inches, "0.0")} in, {sizes.Words}")), ("scale, not rounded", Text($"{low.Scale.Count:0}, {likely.Scale.Count:0}, {high.Scale.Count:0} bf International")), ("sold per bf scaled", Text($"{likely.SoldPerScale:0.00}")),
                ("price, dry 1C and better", Text($"{likely.PriceMoneyPerBf:0.00} a bf")), .. YardLog.Costs(state).Select(cost => (cost.What, Text($"{cost.Money:0.00} a bf"))),
            ],
        };
        yield return new("Haul", miles is null && hours <= 0.0 ? "left out" : Text($"{likely.HaulMoney:#,0}"), miles is null && hours <= 0.0 ? "" : "money", miles is { } road ? Text($"{2.0 * road:0} miles there and back, {hours:0.0} h with loading") : hours > 0.0 ? Text($"{hours:0.0} h; no miles counted: miles not given") : "ask how many miles it is: they are not given") { Method = "log-worth", Source = "rates of the house, settings", Inputs = [("a mile", Text($"{state.Setting("haul_per_mile") ?? 0.0:0.00}")), ("an hour", Text($"{state.Setting("haul_per_hour") ?? 0.0:0}"))] };
        yield return new("Metal, expected", Text($"{likely.MetalMoney:#,0}"), "money", Text($"{likely.StrikesExpected:0.00} strikes: {risk.Words}")) { Method = "log-worth", Source = "strikes of the house by place and scan, settings", Inputs = [("a strike", Text($"{likely.StrikeMoney:0}")), ("none in", Text($"{100.0 * Math.Exp(-likely.StrikesExpected):0} of 100 such logs"))] };
        yield return new("Small end", Text($"{sizes.Likely.Inches:0.0}"), "in", sizes.Low == sizes.High ? sizes.Words : Text($"{Range(sizes.Low.Inches, sizes.High.Inches, "0.0")} inside bark; {sizes.Words}")) { Method = "log-worth", Source = "bark and taper measured on sweetgum stems (lenhart-sweetgum)", Inputs = [("length", Text($"{length.Feet:0.#} ft"))] };
        yield return new("Length of the log", Text($"{length.Feet:0.#}"), "ft", string.IsNullOrWhiteSpace(said) ? "taken, nobody said: ask how far up the first limb is" : "as they say, up to the first limb") { Method = "log-worth", Source = "what the caller says", Inputs = [("taken where nobody says", Text($"{UsualFeet:0} ft"))] };
        if (Weight(species, sizes.Likely, length) is var (kg, volume) && Weight(species, sizes.High, length) is var (most, large))
        {
            var lift = LogLift.Of(state, species, Mass.FromKilograms(most), large, length);
            yield return new("Weighs about", Text($"{kg:#,0}"), "kg", Text($"{(Text($"{kg:0}") == Text($"{most:0}") ? "" : Text($"at most {most:#,0}; "))}without bark; {(kg == most ? "" : "at its largest ")}{lift.Words}"))
            {
                Method = "log-volume-and-weight",
                Source = "taper of 1/2 in per 4 ft assumed; green weight by FIADB REF_SPECIES, USDA Forest Service",
                Inputs = [("volume", Text($"{volume.CubicMetres:0.00} m³")), ("with bark, a tenth over", Text($"{lift.HeavyKg:#,0} kg; decides what lifts it")), ("tie-downs and axles", "your local rules, 49 CFR 393.116 for logs")],
            };
        }
    }

    private static (double Kg, Volume Volume)? Weight(Species species, Length smallEnd, Length length) =>
        LogScale.Of(LogRule.Smalian, new MeasuredLog(smallEnd, length) { LargeEnd = Length.FromInches(smallEnd.Inches + (TaperInchesPerFoot * length.Feet)) })
            .Then(scaled => LogWeight.OfWood(species, scaled.Volume).Then<(double Kg, Volume Volume)>(mass => (mass.Kilograms, scaled.Volume))) is Outcome<(double Kg, Volume Volume)>.Done(var found) ? found : null;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
