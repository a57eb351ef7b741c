using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>One stack for a person: what it is, how it is, what next.</summary>
public sealed record StackSheet(
    Stack Stack, string Title, string Under, IReadOnlyList<Traced> Figures, string? Caution, string NextDo, string NextWhy, IReadOnlyList<MoistureReading> Readings)
{
    /// <summary>Moisture the trade dries to for furniture and floors indoors.</summary>
    private static readonly MoistureContent IndoorTarget = MoistureContent.FromPercent(7.0);

    public static Outcome<StackSheet> Of(YardState state, string tag)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Stacks.TryGetValue(tag, out var stack))
        {
            return new Refusal("stack", tag, $"a stack of the book: {string.Join(", ", state.Stacks.Keys)}");
        }

        return Make(state, stack, stack.Species);
    }

    private static StackSheet Make(YardState state, Stack stack, Species species)
    {
        var outdoor = OutdoorMoisture(state);
        var (nextDo, nextWhy) = Next(state, stack, outdoor);
        List<Traced?> figures = [Moisture(stack), Outdoor(state, outdoor), Dry(state, stack, species), Weight(stack, species)];
        return new(stack, $"Stack {stack.Tag}, {(stack.Proven ? stack.Species.CommonName : "unproven species")} {ThicknessWords(stack)}", UnderTitle(stack),
            [.. figures.OfType<Traced>()], CautionFor(stack), nextDo, nextWhy, [.. stack.Readings.Reverse()]);
    }

    private static string ThicknessWords(Stack stack) =>
        stack.SawnThickness is { } sawn ? string.Create(CultureInfo.InvariantCulture, $"{sawn.Millimetres:0.#} mm") : stack.Thickness.ToString();

    private static string UnderTitle(Stack stack)
    {
        var pieces = stack.Pieces is { } count ? $"{count} pieces, " : "";
        var owner = stack.Owner == "mill" ? "Mill’s own wood" : $"Wood of {stack.Owner}, kept apart";
        var reserved = stack.ReservedFor is { } order ? $", reserved for {order}" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{pieces}{stack.Footage.Count:#,0} bf net as it lies. Sawn {stack.SawnOn:d MMM yyyy}, {stack.Place}. {owner}{reserved}.");
    }

    private static Traced? Moisture(Stack stack)
    {
        if (stack.Moisture is not { Mean: { } mean } reading)
        {
            return null;
        }

        var giveOrTake = reading.Meter?.ErrorPoints ?? 1.0;
        return new("Moisture now", Text(mean.Percent, "0.0"), "%",
            string.Create(CultureInfo.InvariantCulture, $"{mean.Percent - giveOrTake:0.0} to {mean.Percent + giveOrTake:0.0} likely; {reading.Method.ToString().ToLowerInvariant()} on {reading.At:d MMM}"))
        {
            Method = "moisture-meter",
            Source = "correction of one percent for each 20 °F below or above 70 °F (Wengert)",
            Inputs =
            [
                ("as read", reading.Raw is { } raw ? Text(raw.Percent, "0.0") + " %" : "not by meter"),
                ("wood temperature", reading.Wood is { } wood ? Text(wood.Fahrenheit, "0") + " °F" : "not taken"),
                ("meter set to", reading.SetTo?.Name ?? "-"),
                ("boards", reading.Boards?.ToString(CultureInfo.InvariantCulture) ?? "-"),
                ("spread of boards", reading.SdPct is { } sd ? Text(sd, "0.0") + " %" : "-"),
            ],
        };
    }

    /// <summary>What the outdoor air of this month would bring wood to; null without normals.</summary>
    public static (MoistureContent Moisture, ClimateNormalSet Normal)? OutdoorMoisture(YardState state) =>
        state.Normals.TryGetValue(state.Today.Month, out var normal)
            ? (Emc.At(Temperature.FromCelsius(normal.MeanC), RelativeHumidity.FromPercent(normal.MeanRhPct)), normal)
            : null;

    private static Traced? Outdoor(YardState state, (MoistureContent Moisture, ClimateNormalSet Normal)? outdoor) => outdoor is var (moisture, normal)
        ? new("Air holds it at", Text(moisture.Percent, "0.0"), "%", string.Create(CultureInfo.InvariantCulture, $"{state.Today:MMMM}, {normal.MeanC:0.0} °C and {normal.MeanRhPct:0} %"))
        {
            Method = "emc",
            Source = "Hailwood-Horrobin form of the Wood Handbook, FPL-GTR-282, eq. 4-5",
            Inputs = [("mean temperature", Text(normal.MeanC, "0.0") + " °C"), ("mean humidity", Text(normal.MeanRhPct, "0") + " %")],
        }
        : null;

    private static Traced? Dry(YardState state, Stack stack, Species species)
    {
        if (stack.Moisture?.Mean is not { } mean || stack.NeverKiln
            || NetFootage.At(species, stack.Grain == Book.Facts.Grain.Quarter, stack.Footage, mean, IndoorTarget) is not Outcome<BoardFeet>.Done(var shrunk))
        {
            return null;
        }

        var priced = state.Prices.GetValueOrDefault(stack.Species.CommonName);
        var loss = stack.Product is Product.Boards or Product.Blocking ? priced?.FalldownBoardsPct : priced?.FalldownSlabsPct;
        var net = shrunk.Count * (1.0 - (loss?.Likely ?? 0.0) / 100.0);
        return new("Out at 7 %", Text(net, "#,0"), "bf", string.Create(CultureInfo.InvariantCulture, $"{shrunk.Count:#,0} shrunk, less {loss?.Likely ?? 0:0.#} % falldown"))
        {
            Method = "shrinkage",
            Source = "Wood Handbook, FPL-GTR-282, eq. 4-9 and table 4-3; falldown: the mill’s own record",
            Inputs =
            [
                ("net now", Text(stack.Footage.Count, "#,0") + " bf"),
                ("from", Text(mean.Percent, "0.0") + " %"),
                ("to", "7 %"),
                ("falldown, low to high", loss is null ? "none on record" : $"{loss.Low:0.#} to {loss.High:0.#} %"),
            ],
        };
    }

    private static Traced? Weight(Stack stack, Species species)
    {
        if (stack.Moisture?.Mean is not { } mean)
        {
            return null;
        }

        var mass = stack.Footage.NominalVolume.CubicMetres * WoodDensity.At(species, mean).KilogramsPerCubicMetre;
        return new("Weighs about", Text(mass, "#,0"), "kg", string.Create(CultureInfo.InvariantCulture, $"{mass / 0.45359237:#,0} lb at {mean.Percent:0.0} %, nominal thickness"))
        {
            Method = "density-and-weight",
            Source = "Wood Handbook, FPL-GTR-282, eqs. 4-11 and 4-14",
            Inputs = [("basic specific gravity", Text(species.BasicSpecificGravity, "0.00")), ("moisture", Text(mean.Percent, "0.0") + " %"), ("footage", Text(stack.Footage.Count, "#,0") + " bf")],
        };
    }

    private static string? CautionFor(Stack stack) =>
        !stack.Proven ? "Tag lost: the species is unproven. No price, promise or heat-treatment claim until it is settled."
        : stack.Moisture is { SpeciesUnknown: true } ? "Species correction unknown. Cut an oven section before promising anything."
        : stack.Moisture?.Wood is { } wood && wood.Fahrenheit < 32.0 ? "Below freezing. Pins in frozen wood read low. Weigh a board or bring one indoors before you sell on this figure."
        : null;

    private static (string Do, string Why) Next(YardState state, Stack stack, (MoistureContent Moisture, ClimateNormalSet Normal)? outdoor)
    {
        if (stack.Stage == StackStage.InKiln)
        {
            return ($"See charge {stack.Charge}.", "It is in the kiln; its samples tell how it dries.");
        }

        if (stack.Moisture is not { Mean: { } mean } reading)
        {
            return ("Read it.", "Nothing was measured yet.");
        }

        var days = state.Today.DayNumber - DateOnly.FromDateTime(reading.At).DayNumber;
        if (stack.NeverKiln)
        {
            return ("Ship it as soon as it may go.", "It must never see a kiln, and the air only makes it wetter now.");
        }

        if (outdoor is var (moisture, _) && mean.Percent < moisture.Percent)
        {
            return ("Load it in a kiln when one is free.", string.Create(CultureInfo.InvariantCulture, $"Left outdoors it gains: the air holds wood at {moisture.Percent:0.0} %."));
        }

        return days > 14 ? ("Read it again.", $"The last reading is {days} days old.") : ("Leave it on stickers.", "It still dries outdoors.");
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
