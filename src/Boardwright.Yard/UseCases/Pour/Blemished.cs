using Boardwright.Casting;
using Boardwright.Quantities;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Bubbles or sinking of a table, explained from its own record.</summary>
/// <param name="Blemish">Which.</param>
/// <param name="Causes">The likeliest first, each with its test and what to do.</param>
public sealed record PourBlemish(Blemish Blemish, IReadOnlyList<SoftCause> Causes)
{
    private const double UsualCelsius = 20.0;
    private static readonly string[] BubbleWords = ["bubble", "foam", "pinhole"];
    private static readonly string[] SinkWords = ["sank", "sunk", "sink", "low spot", "hollow"];
    private static readonly string[] Negations = ["no bubbles", "no sinking", "without bubbles"];

    /// <summary>What was seen of it, or is asked about.</summary>
    /// <param name="pour">The pour.</param>
    /// <param name="cure">Its cure under the shop's temperatures.</param>
    /// <param name="asked">bubbles or sinking, for a table still in the mould; null for what its record says.</param>
    public static IReadOnlyList<PourBlemish> Of(Pour pour, PourCure cure, string? asked)
    {
        ArgumentNullException.ThrowIfNull(pour);
        ArgumentNullException.ThrowIfNull(cure);
        var seen = Negations.Aggregate($"{pour.Seen} {asked}", (text, no) => text.Replace(no, "", StringComparison.OrdinalIgnoreCase));
        var facts = Facts(pour, cure);
        return [.. new[] { (Blemish.Bubbles, BubbleWords), (Blemish.Sinking, SinkWords) }.Where(pair => pair.Item2.Any(word => seen.Contains(word, StringComparison.OrdinalIgnoreCase)))
            .Select(pair => new PourBlemish(pair.Item1, BlemishCauses.Of(pair.Item1, facts)))];
    }

    private static BlemishFacts Facts(Pour pour, PourCure cure)
    {
        var gel = cure.Model?.Centre.GelCentreHour;
        var start = cure.Shop.Points.Count > 0 ? cure.Shop.Points[0].Celsius : (double?)null;
        var warmed = gel is { } hours && start is { } first ? cure.Shop.Points.Where(point => point.Hour <= hours).Max(point => point.Celsius) - first : (double?)null;
        return new(Length.FromMillimetres(pour.Plan.DepthMm), cure.Resin.DensityMixed, Temperature.FromCelsius(start ?? UsualCelsius), warmed, gel, cure.Model is { } model ? Temperature.FromCelsius(model.Centre.PeakCelsius) : null);
    }
}
