using System.Globalization;
using Boardwright.Drying.Treatment;
using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Wood;

namespace Boardwright.Yard.UseCases;

/// <summary>How long wood is heated until its core was hot for long enough, with the printed times and holds beside ours.</summary>
internal static class QuickHeat
{
    private const int PrintedRows = 6;

    public static QuickQuestion Question(QuickField wood) => new("heat", "How long to heat it against insects or fungi?", "Heating", KilnTreatCommand.Command,
        [
            wood, new("thickness", "Actual thickness", "in", "1"), new("width", "Actual width; empty for wide boards", "in"), new("initial", "Wood at the start", "F", "60"), new("core", "Core shall reach", "F", "133"),
            new("medium", "Air between the layers", "F", "160"), new("wet-bulb-depression", "Wet bulb under it by", "F", "0"), new("against", "Against") { Choices = [("pests", "pests, by the international rule"), ("beetles", "powderpost beetles"), ("fungi", "fungi")] },
        ], "heat-treatment")
    {
        Show = (_, typed, answer) => Show(typed, (KilnTreatCommand.Answer)answer),
    };

    internal static (string First, string Words) Caution { get; } = ("An estimate proves nothing.", "Probes in the coldest cores do. Wood or packaging that must carry a mark needs an accredited agency and its inspector; the plant-health authority and the rules of the place decide. Hot wet air scalds: nobody inside while it runs.");

    private static QuickAnswer Show(IReadOnlyDictionary<string, string> typed, KilnTreatCommand.Answer answer) => new(
    [
        new("Core is there after", Minutes(answer.HeatingMin), "", $"likely; {Minutes(answer.HeatingUpperMin)} covers the printed 99 % bounds: plan with that")
        {
            Method = "heat-treatment", Source = $"{answer.Source} ({SourceMark.Words(answer.Mark)})", Inputs = [.. new[] { ("wood", "species"), ("thickness", "thickness"), ("core", "core"), ("air", "medium") }.Select(one => (one.Item1, typed.GetValueOrDefault(one.Item2) ?? ""))],
        },
        new("Then held for", answer.HoldMin is { } hold ? Minutes(hold) : "no hold known", "", answer.HoldMin is null ? "no table holds for a core this cool: heat it hotter" : "without a break, by the coldest core") { Method = "heat-treatment", Source = answer.HoldSource },
        new("In all", answer.TotalMin is not null ? Minutes(answer.HeatingUpperMin + answer.HoldMin!.Value) : "–", "", answer.TotalMin is { } total ? $"by the late time; {Minutes(total)} by the likely one. Warming of the room comes first" : "without a hold nothing is treated") { Method = "heat-treatment" },
    ], "Set probes in the middle of the thickest, coldest boards, low and at the side the air leaves; count the time from when the last of them is there.")
    {
        Caution = Caution,
        Tables = [.. Printed(typed), Holds()],
    };

    private static IEnumerable<QuickTable> Printed(IReadOnlyDictionary<string, string> typed)
    {
        if (SpeciesTable.Find("wood", typed.GetValueOrDefault("species") ?? "") is not Outcome<Species>.Done(var species) || Read.Length("thickness", WithInches(typed.GetValueOrDefault("thickness"))) is not Outcome<Length>.Done(var thickness))
            yield break;
        var rows = HeatPrinted.For(species, thickness).Take(PrintedRows).OrderBy(row => row.Thickness.Inches).ThenBy(row => row.Depression.Kelvins).ToList();
        yield return new("Printed times, nearest sizes",
            ["Size, in", "Dry, °F", "Printed, min", "Ours, min"],
            [.. rows.Select(row => (IReadOnlyList<string>)[Text($"{row.Thickness.Inches:0.#} × {row.Width.Inches:0.#}"), Text($"{1.8 * row.Depression.Kelvins:0}"), Text($"{row.Heating.Minutes:0}{(row.Upper is { } upper ? $" / {upper.Minutes:0}" : "")}"), Ours(species, row)])],
            Text($"{rows[0].Wood}, wood at {rows[0].Initial.Fahrenheit:0} °F, air at {rows[0].Medium.Fahrenheit:0}, core to {rows[0].Core.Fahrenheit:0}; dry: wet bulb under the air by. Time / its 99 % bound. {rows[0].Source}, seen in print."));
    }

    private static string Ours(Species species, HeatPrinted row) =>
        HeatTreatment.For(species, row.Thickness, row.Width, row.Initial, row.Core, row.Medium, row.Depression) is Outcome<HeatTreatment>.Done(var ours)
            ? Text($"{ours.Heating.Minutes:0} / {ours.HeatingUpper.Minutes:0}") : "none";

    private static QuickTable Holds() => new("How long a core must be held",
        ["Against", "Core, °F", "Hold", "Up to, in"],
        [.. HeatHold.Printed.Select(row => (IReadOnlyList<string>)[row.Against switch { HeatAgainst.Pests => "pests", HeatAgainst.PowderpostBeetles => "beetles", _ => "fungi" }, Text($"{row.Core.Fahrenheit:0}"), Minutes(row.Hold.Time.Minutes), row.ThicknessMax is { } most ? Text($"{most.Inches:0.##}") : "any"])],
        "ISPM 15, treatment HT; Wood Handbook, ch. 14; Dry Kiln Operator’s Manual (from memory); Chidester 1937. Beetles: powderpost beetles of dry sapwood. Under the coolest row no hold is known.");

    internal static string Minutes(double minutes) => minutes < 100.0 ? Text($"{minutes:0} min") : Text($"{minutes / 60.0:0.0} h");

    private static string WithInches(string? text) => text is { Length: > 0 } given && char.IsAsciiDigit(given.Trim()[^1]) && !given.Contains("/4", StringComparison.Ordinal) ? given + "in" : text ?? "";

    private static string Text(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
