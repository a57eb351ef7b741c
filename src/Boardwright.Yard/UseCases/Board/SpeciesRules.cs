using Boardwright.Wood;

namespace Boardwright.Yard.UseCases;

/// <summary>Whether the standard grades are the whole rule for a species.</summary>
internal static class SpeciesRules
{
    private static readonly string[] Standard = ["ash", "beech", "birch", "hackberry", "buckeye", "boxelder", "sycamore", "sassafras"];
    private static readonly string[] Apart = ["walnut", "cherry", "maple", "oak"];

    public static string Words(Species? species) => species switch
    {
        null => "No species given: the standard grades.",
        _ when Holds(species, Apart) => $"{Name(species)} has rules of its own (sapwood, heart, gum, mineral streak) that are not applied here: the standard grades only.",
        _ when Holds(species, Standard) => $"{Name(species)} is graded by the standard grades.",
        _ => $"Whether {species.CommonName} has rules of its own was not looked up: the standard grades.",
    };

    private static bool Holds(Species species, string[] words) => words.Any(word => species.CommonName.Contains(word, StringComparison.OrdinalIgnoreCase));

    private static string Name(Species species) => char.ToUpperInvariant(species.CommonName[0]) + species.CommonName[1..];
}
