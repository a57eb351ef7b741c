using Boardwright.Quantities;

namespace Boardwright.Casting;

/// <summary>What the can and the data sheet say, kept as printed and shown apart from the cure model.</summary>
public sealed record ResinLabel
{
    /// <summary>Deepest single pour; null when not stated.</summary>
    public Length? DeepestPour { get; init; }

    /// <summary>Temperature the times hold at.</summary>
    public Temperature At { get; init; } = Temperature.FromCelsius(20.0);

    /// <summary>Depth the times hold for; null when not stated.</summary>
    public Length? Depth { get; init; }

    /// <summary>Time to gel in that depth; null when not stated.</summary>
    public Elapsed? Gel { get; init; }

    /// <summary>Time to demould from that depth; null when not stated.</summary>
    public Elapsed? Demould { get; init; }

    /// <summary>Time to gel of a stated mass in a cup; null when not stated.</summary>
    public Elapsed? CupGel { get; init; }

    /// <summary>Mass in that cup.</summary>
    public Mass? CupMass { get; init; }

    /// <summary>Temperature that cup time holds at.</summary>
    public Temperature? CupAt { get; init; }

    /// <summary>Times double for each of these steps colder.</summary>
    public TemperatureDifference Doubling { get; init; } = TemperatureDifference.FromKelvins(10.0);
}
