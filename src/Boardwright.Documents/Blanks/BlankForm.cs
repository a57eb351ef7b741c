namespace Boardwright.Documents.Blanks;

/// <summary>A form of the shop to be filled with a pencil, for the days when the phone is drowned.</summary>
/// <param name="Name">Its place in an address, such as log-intake.</param>
/// <param name="Title">Printed at its head.</param>
/// <param name="About">When it is used, in a sentence.</param>
/// <param name="Parts">From top to bottom.</param>
/// <param name="IsWide">Laid across: many columns.</param>
public sealed record BlankForm(string Name, string Title, string About, IReadOnlyList<BlankPart> Parts, bool IsWide = false);

/// <summary>One block of a blank form.</summary>
public abstract record BlankPart
{
    private BlankPart()
    {
    }

    /// <summary>Boxes with their labels, side by side: each takes so many twelfths of the width.</summary>
    public sealed record Boxes(IReadOnlyList<BlankBox> All) : BlankPart;

    /// <summary>A ruled table.</summary>
    /// <param name="Heading">Over it; null for none.</param>
    /// <param name="Columns">Heads and shares of the width; "\n" parts two lines.</param>
    /// <param name="Count">How many; 0 fills the sheet down to what comes after it.</param>
    /// <param name="Panels">Side by side.</param>
    public sealed record Rows(string? Heading, IReadOnlyList<(string Head, double Share)> Columns, int Count = 0, int Panels = 1) : BlankPart;

    /// <summary>A sentence.</summary>
    public sealed record Note(string Text) : BlankPart;

    /// <summary>Cautions in a frame, and who has the last word about them.</summary>
    public sealed record Cautions(string Title, IReadOnlyList<string> All, string Deference) : BlankPart;

    /// <summary>Lines to sign on, each with what its signature says.</summary>
    public sealed record Signatures(IReadOnlyList<string> Meanings) : BlankPart;
}

/// <summary>A box to write in.</summary>
/// <param name="Twelfths">Of the width, 1 to 12.</param>
public sealed record BlankBox(string Label, int Twelfths = 4);
