using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>The species this program knows, and how a person's word for one is understood.</summary>
/// <method page="docs/methods/species.md"/>
public static class SpeciesTable
{
    private const int NearNamesMax = 6;

    /// <summary>Every species, in the order of the table: hardwoods, then softwoods.</summary>
    public static IReadOnlyList<Species> All { get; } = SpeciesData.Load();

    /// <summary>Finds a species by common, scientific or trade name, in any case; an unambiguous beginning is enough, and so are the last words of a name that only one species has.</summary>
    /// <param name="what">The field or option, for the refusal.</param>
    /// <param name="text">What the person wrote.</param>
    /// <returns>The species, or a refusal that lists the names meant or the nearest ones.</returns>
    public static Outcome<Species> Find(string what, string text)
    {
        var wanted = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (wanted.Length > 0)
        {
            if (All.FirstOrDefault(species => Names(species).Any(name => Same(name, wanted))) is { } exact)
                return exact;

            var begun = All.Where(species => Names(species).Any(name => name.StartsWith(wanted, StringComparison.OrdinalIgnoreCase))).ToList();
            if (begun.Count == 1)
                return begun[0];

            if (begun.Count > 1)
                return new Refusal(what, text, $"one species; this could be {List(begun)}");

            // A person says "red oak" or "walnut": the end of a name is enough where only one species has it.
            var holding = All.Where(species => Names(species).Any(name => name.Contains(wanted, StringComparison.OrdinalIgnoreCase))).ToList();
            if (holding is [var only] && Names(only).Any(name => EndsInWords(name, wanted)))
                return only;
        }

        return new Refusal(what, text, $"a species of the table, by common or scientific name{Nearest(wanted)}");
    }

    private static string Nearest(string wanted)
    {
        if (wanted.Length == 0)
            return ", such as sugar maple or Quercus alba";

        var holding = All.Where(species => Names(species).Any(name => name.Contains(wanted, StringComparison.OrdinalIgnoreCase))).ToList();
        if (holding.Count > 0)
            return $"; near names: {List(holding)}";

        // Slips of the keyboard: names within a third of their letters.
        var near = All
            .Select(species => (species, distance: Names(species).Min(name => EditDistance(name.ToUpperInvariant(), wanted.ToUpperInvariant()))))
            .Where(pair => pair.distance <= Math.Max(2, wanted.Length / 3))
            .OrderBy(pair => pair.distance)
            .Select(pair => pair.species)
            .Take(3)
            .ToList();
        return near.Count > 0 ? $"; near names: {List(near)}" : $"; none is near ({All.Count} species are listed)";
    }

    private static IEnumerable<string> Names(Species species) => [species.CommonName, species.ScientificName, .. species.AlsoCalled];

    private static bool EndsInWords(string name, string wanted) =>
        name.EndsWith(wanted, StringComparison.OrdinalIgnoreCase) && name.Length > wanted.Length && name[^(wanted.Length + 1)] is ' ' or '-';

    private static bool Same(string name, string wanted) => name.Equals(wanted, StringComparison.OrdinalIgnoreCase);

    private static string List(List<Species> species) =>
        string.Join(", ", species.Take(NearNamesMax).Select(one => one.CommonName)) + (species.Count > NearNamesMax ? $" and {species.Count - NearNamesMax} more" : "");

    // Levenshtein distance: insertions, deletions and changes of a letter.
    private static int EditDistance(string left, string right)
    {
        var row = Enumerable.Range(0, right.Length + 1).ToArray();
        for (var i = 1; i <= left.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var above = row[j];
                row[j] = Math.Min(Math.Min(row[j - 1], above) + 1, diagonal + (left[i - 1] == right[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }

        return row[right.Length];
    }
}
