using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.Book;

// Stacks, their moisture, and planing.
internal sealed partial class Fold
{
    // Stacks whose footage is a tally of their own, not the sum of what was sawn onto them.
    private readonly HashSet<string> ownTally = [];

    // What a stack was before nothing was left of it: boards found by a count are that again.
    private readonly Dictionary<string, StackStage> beforeGone = new(StringComparer.Ordinal);

    private Refusal? On(StackBuilt fact)
    {
        var refusal = Fresh("stack", fact.Stack, stacks) ?? SpeciesOf(fact.Species, out _)
            ?? InRange("thickness_quarters", fact.ThicknessQuarters, 1, 48, "1/4 to 48/4")
            ?? InRange("bf", fact.Bf, 0.0, 1e6, "0 to 1e6 bf")
            ?? KnownPlace(fact.Place);
        if (refusal is not null)
            return refusal;

        SpeciesOf(fact.Species, out var species);
        if (fact.Bf is not null)
            ownTally.Add(fact.Stack);
        return Set(stacks, fact.Stack, new Stack
        {
            Tag = fact.Stack,
            Species = species,
            Thickness = NominalThickness.FromQuarters(fact.ThicknessQuarters),
            SawnThickness = Millimetres(fact.SawnThicknessMm),
            Product = fact.Product,
            Grain = fact.Grain,
            Footage = BoardFeet.From(fact.Bf ?? 0.0),
            FootageBuilt = BoardFeet.From(fact.Bf ?? 0.0),
            Pieces = fact.Pieces,
            SawnOn = fact.SawnOn,
            Place = fact.Place,
            Owner = fact.Owner,
            ReservedFor = fact.ReservedFor,
            NeverKiln = fact.NeverKiln,
            ShortestPiece = Metres(fact.PieceLengthMinM),
            LongestPiece = Metres(fact.PieceLengthMaxM),
            PieceWidth = Millimetres(fact.PieceWidthMm),
            Note = fact.Note,
            History = [entry.Number],
        });
    }

    private Refusal? On(StackMoved fact) => KnownPlace(fact.Place) ?? WithStack(fact.Stack, stack => stack with { Place = fact.Place });

    private Refusal? On(StackReserved fact) => WithStack(fact.Stack, stack => stack with { ReservedFor = fact.ReservedFor, NeverKiln = fact.NeverKiln });

    private Refusal? On(StackCounted fact)
    {
        ownTally.Add(fact.Stack);
        if (stacks.ContainsKey(fact.Stack))
            Measured(fact.Stack);
        return InRange("bf", fact.Bf, 0.0, 1e6, "0 to 1e6 bf") ?? WithStack(fact.Stack, stack => Left(stack with
        {
            Stage = stack.IsHere ? stack.Stage : beforeGone.GetValueOrDefault(fact.Stack, StackStage.AirDrying),
            Footage = BoardFeet.From(fact.Bf),
            Pieces = fact.Pieces ?? stack.Pieces,
            AboutSince = null,
            Counts = stack.Counts.Add(new(entry.HappenedAt, stack.Footage, BoardFeet.From(fact.Bf))),
        }));
    }

    private Refusal? On(StackTakenFrom fact) => Take(fact.Stack, fact.Bf, fact.Pieces, sure: false);

    private Refusal? On(StackDressed fact)
    {
        var refusal = Fresh("out_stack", fact.OutStack, stacks)
            ?? InRange("bf_out", fact.BfOut, 0.0, fact.BfIn, "at most what went in")
            ?? Take(fact.Stack, fact.BfIn, null, sure: true);
        if (refusal is not null)
            return refusal;

        var source = stacks[fact.Stack];
        stacks[fact.OutStack] = source with
        {
            Tag = fact.OutStack,
            Stage = StackStage.Dressed,
            Footage = BoardFeet.From(fact.BfOut),
            FootageBuilt = BoardFeet.From(fact.BfOut),
            AboutSince = null,
            Pieces = fact.PiecesOut,
            SawnThickness = Length.FromMillimetres(fact.ThicknessMm),
            Place = fact.Place ?? source.Place,
            FromStack = fact.Stack,
            FromLogs = [],
            IntoStacks = [],
            IntoPacks = [],
            Counts = [],
            History = [entry.Number],
        };
        ownTally.Add(fact.OutStack);
        Shave(source.Species, fact.ShavingsM3);
        return WithStack(fact.Stack, stack => stack with { IntoStacks = stack.IntoStacks.Add(fact.OutStack) });
    }

    private Refusal? On(CustomPlaned fact)
    {
        if (SpeciesOf(fact.Species, out var species) is { } unknown)
            return unknown;
        Shave(species, fact.ShavingsM3);
        return null;
    }

    private Refusal? On(ShavingsEmptied fact)
    {
        shavings = new(entry.HappenedAt, shavings.Species.Clear(), 0.0);
        return null;
    }

    private Refusal? On(MoistureRead fact)
    {
        MeterSetting? setting = null;
        var refusal = InRange("raw_pct", fact.RawPct, 0.0, 100.0, "0 to 100 %") ?? InRange("mean_pct", fact.MeanPct, 0.0, 300.0, "0 to 300 %")
            ?? InRange("wood_c", fact.WoodC, -40.0, 100.0, "-40 to 100 C")
            ?? (fact.SpeciesSetting is { } text ? Got(MeterSetting.Find("species_setting", text), out setting) : null)
            ?? fact.Method switch
            {
                MoistureMethod.Pin when fact.RawPct is null || fact.WoodC is null => new("wood_c", "none", "the raw reading and the wood temperature, which a pin meter depends on"),
                MoistureMethod.PackWeight => Weighed(fact),
                _ => null,
            };
        return refusal ?? WithStack(fact.Stack, stack => stack with
        {
            Readings = stack.Readings.Add(Reread(new(entry.Number, entry.HappenedAt, fact.Method, Moisture(fact.MeanPct), fact.SdPct, fact.Boards)
            {
                Raw = Moisture(fact.RawPct),
                Wood = Celsius(fact.WoodC),
                SetTo = setting ?? (fact.RawPct is null ? null : MeterSetting.For(stack.Species)),
                Weighed = fact.WeightKg is { } all ? (Mass.FromKilograms(all - (fact.TareKg ?? 0.0)), GreenVolume(stack)) : null,
            }, stack.Species)),
        });
    }

    private Refusal? On(SectionsWeighed fact)
    {
        var moistures = new List<MoistureContent>();
        foreach (var section in fact.Sections)
        {
            if (Got(OvenMoisture.Of("wet_g", Mass.FromGrams(section.WetG), "dry_g", Mass.FromGrams(section.DryG)), out var moisture) is { } refusal)
                return refusal;
            moistures.Add(moisture);
        }

        return Got(LotStatistics.Of(moistures), out var lot) ?? WithStack(fact.Stack, stack => stack with
        {
            Readings = stack.Readings.Add(new(
                entry.Number, entry.HappenedAt, MoistureMethod.OvenSections, MoistureContent.FromPercent(lot.MeanPercent), lot.StandardDeviationPercent, lot.Count)),
        });
    }

    private Refusal? Weighed(MoistureRead fact) =>
        InRange("weight_kg", fact.WeightKg ?? double.NaN, 1.0, 50_000.0, "the weight of all on the scale, 1 to 50000 kg")
        ?? InRange("tare_kg", fact.TareKg, 0.0, fact.WeightKg ?? 0.0, "0 kg to the weight of all")
        ?? (stacks.TryGetValue(fact.Stack, out var stack) && WoodWeight.MoistureOf(stack.Species, Mass.FromKilograms(fact.WeightKg!.Value - (fact.TareKg ?? 0.0)), GreenVolume(stack)) is Outcome<MoistureContent>.Refused(var reasons)
            ? reasons[0] : null);

    // The size it was sawn to, green; where that is not known an eighth of an inch over the name, as in cutting.
    private static Volume GreenVolume(Stack stack) =>
        stack.Footage.NominalVolume * ((stack.SawnThickness ?? stack.Thickness.Length + Length.FromInches(0.125)).Metres / stack.Thickness.Length.Metres);

    // A reading is understood anew whenever the species is: of a meter temperature always, species where the resistance table has a row; of a scale by the weight of dry wood.
    private static MoistureReading Reread(MoistureReading reading, Species species)
    {
        if (reading.Weighed is { } weighed)
            return reading with { Mean = WoodWeight.MoistureOf(species, weighed.Wood, weighed.Green) is Outcome<MoistureContent>.Done(var moisture) ? moisture : null };
        if (reading is not { Raw: { } raw, Wood: { } wood, SetTo: { } setTo })
            return reading;
        return MeterReading.Correct(raw, wood, species, setTo, MeterTemperatureRule.OnePerTwentyFahrenheit) is Outcome<MeterReading>.Done(var meter)
            ? reading with { Meter = meter, Mean = meter.IsFrozenAndWet ? null : meter.Corrected ?? meter.TemperatureCorrected }
            : reading;
    }

    private Refusal? Take(string tag, double bf, int? pieces, bool sure) =>
        !stacks.TryGetValue(tag, out var stack) ? Unknown("stack", tag, stacks)
        : InRange("bf", bf, 0.0, stack.Footage.Count + 0.5, $"at most the {stack.Footage.Count:0.#} bf on {tag}")
        ?? WithStack(tag, s => Left(s with
        {
            Footage = BoardFeet.From(Math.Max(s.Footage.Count - bf, 0.0)),
            Pieces = pieces is null ? null : s.Pieces - pieces,
            AboutSince = s.AboutSince ?? (sure ? null : entry.HappenedAt),
        }));

    private Stack Left(Stack stack)
    {
        if (stack.Footage.Count >= 0.5 || !stack.IsHere)
            return stack;
        beforeGone[stack.Tag] = stack.Stage;
        return stack with { Stage = StackStage.Gone, AboutSince = null };
    }

    private void Shave(Species species, double? looseM3) =>
        shavings = shavings with { Species = shavings.Species.Add(species.CommonName), LooseM3 = shavings.LooseM3 + (looseM3 ?? 0.0) };

    private Refusal? KnownPlace(string place) => places.Count == 0 || places.ContainsKey(place) || kilns.ContainsKey(place) ? null
        : new("place", place, $"a place of the yard: {string.Join(", ", places.Keys.Concat(kilns.Keys))}");

    private Refusal? WithStack(string tag, Func<Stack, Stack> change)
    {
        if (!stacks.TryGetValue(tag, out var stack))
            return Unknown("stack", tag, stacks);
        stacks[tag] = change(stack) with { History = stack.History.Add(entry.Number) };
        return null;
    }

    private static Length? Millimetres(double? mm) => mm is { } value ? Length.FromMillimetres(value) : null;

    private static Length? Metres(double? m) => m is { } value ? Length.FromMetres(value) : null;

    private static MoistureContent? Moisture(double? percent) => percent is { } value ? MoistureContent.FromPercent(value) : null;

    private static Temperature? Celsius(double? celsius) => celsius is { } value ? Temperature.FromCelsius(value) : null;
}
