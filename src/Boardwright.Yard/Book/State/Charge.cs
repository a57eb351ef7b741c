using System.Collections.Immutable;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

/// <summary>Wood dried together in one kiln, from loading to the last stack out.</summary>
public sealed record Charge
{
    public required string Tag { get; init; }

    public required string Kiln { get; init; }

    /// <summary>Stacks that went in.</summary>
    public required ImmutableList<string> Stacks { get; init; }

    /// <summary>Footage that went in.</summary>
    public required BoardFeet FootageIn { get; init; }

    public required MoistureContent Target { get; init; }

    public required DateTime LoadedAt { get; init; }

    public DateOnly? ExpectedOutOn { get; init; }

    /// <summary>Schedule of the house it is dried by; null for the listed one of its woods.</summary>
    public string? Schedule { get; init; }

    public ImmutableList<Sample> Samples { get; init; } = [];

    public ImmutableList<Setting> Settings { get; init; } = [];

    public ImmutableList<Gauge> Gauges { get; init; } = [];

    public ImmutableList<Gap> Gaps { get; init; } = [];

    /// <summary>Steps ticked on the way back from a stop.</summary>
    public ImmutableList<RestartTick> Restarts { get; init; } = [];

    public ImmutableList<ProngTest> StressTests { get; init; } = [];

    public ImmutableList<Treatment> Treatments { get; init; } = [];

    /// <summary>What came out, each with its measured moisture.</summary>
    public ImmutableList<StackOut> Out { get; init; } = [];

    public DateTime? UnloadedAt { get; init; }

    public ImmutableList<long> History { get; init; } = [];

    public bool IsRunning => UnloadedAt is null;

    /// <summary>The last reading of both bulbs where it tells of a dry wick; null once a later one is sound.</summary>
    public Gauge? DoubtfulWick => Gauges.LastOrDefault(gauge => gauge is { DryBulb: not null, WetBulb: not null }) is { WickInDoubt: true } gauge ? gauge : null;

    /// <summary>Stacks still inside.</summary>
    public IEnumerable<string> StacksInside => Stacks.Where(stack => Out.All(o => o.Stack != stack));

    /// <summary>Samples that can still be believed.</summary>
    public IEnumerable<Sample> SoundSamples => Samples.Where(sample => !sample.Retired && sample.Weighings.Count > 0);

    /// <summary>Mean of the newest moisture of the sound samples.</summary>
    public MoistureContent? SampleMean => SoundSamples.Any() ? MoistureContent.FromFraction(SoundSamples.Average(sample => sample.Moisture.Fraction)) : null;

    public Sample? Wettest => SoundSamples.MaxBy(sample => sample.Moisture.Fraction);

    public Sample? Driest => SoundSamples.MinBy(sample => sample.Moisture.Fraction);
}

/// <summary>A sample board. Its moisture is its weight against its calculated dry weight at that time.</summary>
public sealed record Sample
{
    public required string Name { get; init; }

    public string? Stack { get; init; }

    public required ImmutableList<Section> Sections { get; init; }

    /// <summary>Oven-dry weight reckoned from its sections, scaled down when wood was lost.</summary>
    public required Mass CalculatedDry { get; init; }

    public ImmutableList<Weighing> Weighings { get; init; } = [];

    /// <summary>When its wood was lost without a weight after it; null while it can be believed.</summary>
    public DateTime? RetiredAt { get; init; }

    public bool Retired => RetiredAt is not null;

    public MoistureContent Moisture => Weighings[^1].Moisture;
}

/// <summary>A weight and the moisture it means; after a loss of wood also the dry weight before it.</summary>
public sealed record Weighing(long Entry, DateTime At, Mass Weight, MoistureContent Moisture, bool AfterDamage = false)
{
    /// <summary>The oven-dry weight its moisture was reckoned with.</summary>
    public Mass DryWeight => Mass.FromGrams(Weight.Grams / (1.0 + Moisture.Fraction));
}

/// <summary>Set points of the controller.</summary>
public sealed record Setting(long Entry, DateTime At, Temperature DryBulb, Temperature WetBulb, string? Note);

/// <summary>Gauges read.</summary>
public sealed record Gauge(long Entry, DateTime At, Temperature? DryBulb, Temperature? WetBulb, Pressure? Pressure, Temperature? Core, double? CondensateL, double? EnergyKwh, string? Note)
{
    // Air in a kiln is never quite saturated: a wet bulb this near the dry one tells of its wick, not of the air.
    private const double NearKelvins = 0.5;

    // Two bulbs read by hand repeat to about 1 °F each: this near they are alike, where the setting wants them far apart. Common practice, no source.
    private const double AlikeFahrenheit = 2.05;
    private const double FarFahrenheit = 8.0;

    /// <summary>What the controller was set to when it was read; null before the first setting.</summary>
    public Setting? Set { get; init; }

    /// <summary>True when the wet bulb reads as the dry one does: the wick is dry or off, and no humidity follows from it.</summary>
    public bool WickInDoubt => DryBulb is { } dry && WetBulb is { } wet && IsWickInDoubt(dry, wet, Set);

    /// <summary>The same of two bulbs: alike, or alike within 2 °F while the setting holds them 8 °F or more apart.</summary>
    public static bool IsWickInDoubt(Temperature dryBulb, Temperature wetBulb, Setting? set) => (dryBulb - wetBulb).Kelvins < NearKelvins
        || (set is not null && (dryBulb - wetBulb).FahrenheitDegrees <= AlikeFahrenheit && (set.DryBulb - set.WetBulb).FahrenheitDegrees >= FarFahrenheit);
}

/// <summary>A gap in the drying; nothing is drawn across it.</summary>
public sealed record Gap(long Entry, InterruptionCause Cause, DateTime From, DateTime? To, Temperature? DryBulbLowest, bool? DoorsShut, bool? VentsShut, bool? FansRan, string? Note);

/// <summary>A step of a restart that is done.</summary>
public sealed record RestartTick(long Entry, DateTime At, RestartStep Step);

/// <summary>A stress test as recorded.</summary>
public sealed record ProngTest(long Entry, DateTime At, StressTested Test);

/// <summary>A heat treatment as recorded.</summary>
public sealed record Treatment(long Entry, DateTime At, Temperature Core, Elapsed Held, string? Probe);

/// <summary>A charge the owner means to run.</summary>
public sealed record PlannedCharge(string Tag, string Kiln, DateOnly InOn, DateOnly OutOn, ImmutableList<string> Stacks, string? Serves, long Entry);
