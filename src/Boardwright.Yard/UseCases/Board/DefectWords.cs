using Boardwright.Sawing;

namespace Boardwright.Yard.UseCases;

/// <summary>What defects are called in files and on the page.</summary>
public static class DefectWords
{
    private static readonly (DefectKind Kind, string Word)[] Words =
    [
        (DefectKind.Knot, "knot"), (DefectKind.UnsoundKnot, "unsound knot"), (DefectKind.Hole, "hole"), (DefectKind.PinHoles, "pin holes"), (DefectKind.Wane, "wane"), (DefectKind.Split, "split"),
        (DefectKind.Shake, "shake"), (DefectKind.Pith, "pith"), (DefectKind.Rot, "rot"), (DefectKind.BarkPocket, "bark pocket"), (DefectKind.Stain, "stain"), (DefectKind.Streak, "streak"),
        (DefectKind.BirdPeck, "bird peck"), (DefectKind.SeasonCheck, "season check"),
    ];

    /// <summary>The words, in the order a form shows them.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Words.Select(pair => pair.Word)];

    internal static string Accepted { get; } = string.Join(", ", All);

    /// <summary>The word of a kind.</summary>
    public static string Of(DefectKind kind) => Words.First(pair => pair.Kind == kind).Word;

    /// <summary>The kind of a word, spaces, dashes and underscores alike; null for a word that is none.</summary>
    public static DefectKind? Find(string? text)
    {
        var word = text?.Trim().Replace('-', ' ').Replace('_', ' ');
        foreach (var (kind, known) in Words)
        {
            if (known.Equals(word, StringComparison.OrdinalIgnoreCase))
                return kind;
        }

        return null;
    }
}
