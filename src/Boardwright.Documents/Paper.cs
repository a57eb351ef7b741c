namespace Boardwright.Documents;

/// <summary>A sheet of paper, upright, in millimetres.</summary>
/// <param name="Name">As printed on the box of paper and in an address: a4, letter, a5, half-letter.</param>
/// <param name="WidthMm">Short side.</param>
/// <param name="HeightMm">Long side.</param>
public sealed record Paper(string Name, double WidthMm, double HeightMm)
{
    public static Paper A4 { get; } = new("a4", 210.0, 297.0);

    public static Paper Letter { get; } = new("letter", 215.9, 279.4);

    public static Paper A5 { get; } = new("a5", 148.0, 210.0);

    public static Paper HalfLetter { get; } = new("half-letter", 139.7, 215.9);

    /// <summary>The papers of the everyday sheets; a pack tag also takes the two half sizes.</summary>
    public static IReadOnlyList<Paper> All { get; } = [A4, Letter, A5, HalfLetter];

    /// <summary>The paper of that name in any case, or nothing.</summary>
    public static Paper? Find(string name) => All.FirstOrDefault(paper => string.Equals(paper.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>A full sheet carries a run sheet or a tally; a half sheet only a tag.</summary>
    internal bool IsFullSheet => this == A4 || this == Letter;
}
