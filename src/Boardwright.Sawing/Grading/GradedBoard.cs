using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>A defect as the rectangle round it, measured from the board's left end and lower edge.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="FromLeft">Left end of the board to the rectangle.</param>
/// <param name="FromEdge">Lower edge of the board to the rectangle.</param>
/// <param name="Length">Along the board.</param>
/// <param name="Width">Across the board.</param>
public sealed record BoardDefect(DefectKind Kind, Length FromLeft, Length FromEdge, Length Length, Length Width);

/// <summary>One face of a board.</summary>
/// <param name="Name">As the person calls it.</param>
/// <param name="Defects">What is on it.</param>
public sealed record BoardFace(string Name, IReadOnlyList<BoardDefect> Defects);

/// <summary>A board to be graded. Both faces are measured from the same end and the same edge, as if the board were glass.</summary>
/// <param name="Thickness">Nominal thickness.</param>
/// <param name="Width">Width.</param>
/// <param name="Length">Length, fractions of a foot kept.</param>
/// <param name="First">One face.</param>
/// <param name="Second">The other.</param>
/// <param name="KilnDried">Kiln dried: the least widths of boards are a quarter inch scant.</param>
public sealed record GradedBoard(NominalThickness Thickness, Length Width, Length Length, BoardFace First, BoardFace Second, bool KilnDried = false)
{
    /// <summary>Most defects of a face the search takes.</summary>
    public const int DefectsMax = 60;

    private static readonly (Length Least, Length Most) WidthRange = (Length.FromInches(1.0), Length.FromMetres(1.0));
    private static readonly (Length Least, Length Most) LengthRange = (Length.FromFeet(1.0), Length.FromFeet(20.0));

    // A tenth of a millimetre: what a rectangle written in whole millimetres may pass an edge by.
    private static readonly Length Slack = Length.FromMillimetres(0.1);

    /// <summary>The board if its sizes and defects make sense; every fault otherwise.</summary>
    public Outcome<GradedBoard> Checked()
    {
        var refusals = new List<Refusal>();
        if (Width < WidthRange.Least || Width > WidthRange.Most)
            refusals.Add(new("width", Millimetres(Width), $"{Millimetres(WidthRange.Least)} to {Millimetres(WidthRange.Most)}"));
        if (Length < LengthRange.Least || Length > LengthRange.Most)
            refusals.Add(new("length", Millimetres(Length), $"{Millimetres(LengthRange.Least)} to {Millimetres(LengthRange.Most)} (1 to 20 ft)"));
        foreach (var face in new[] { First, Second })
        {
            if (face.Defects.Count > DefectsMax)
                refusals.Add(new($"face {face.Name}", $"{face.Defects.Count} defects", $"up to {DefectsMax}; join those that touch"));
            for (var i = 0; i < face.Defects.Count; i++)
                refusals.AddRange(Faults($"face {face.Name}, defect {i + 1}", face.Defects[i]));
        }

        return refusals.Count > 0 ? new Outcome<GradedBoard>.Refused(refusals) : this;
    }

    private IEnumerable<Refusal> Faults(string what, BoardDefect defect)
    {
        if (defect.Length.Metres <= 0.0 || defect.Width.Metres <= 0.0)
            yield return new(what, $"{Millimetres(defect.Length)} by {Millimetres(defect.Width)}", "a length and a width above 0");
        if (defect.FromLeft + defect.Length > Length + Slack)
            yield return new(what, $"to {Millimetres(defect.FromLeft + defect.Length)} from the left end", $"inside the board's length of {Millimetres(Length)}");
        if (defect.FromEdge + defect.Width > Width + Slack)
            yield return new(what, $"to {Millimetres(defect.FromEdge + defect.Width)} from the lower edge", $"inside the board's width of {Millimetres(Width)}");
        if (defect.Kind == DefectKind.Wane && !OnLowerEdge(defect) && !OnUpperEdge(defect))
            yield return new(what, $"wane {Millimetres(defect.FromEdge)} from the lower edge", "wane that begins at an edge of the board");
    }

    internal static bool OnLowerEdge(BoardDefect defect) => defect.FromEdge <= Slack;

    internal bool OnUpperEdge(BoardDefect defect) => defect.FromEdge + defect.Width >= Width - Slack;

    private static string Millimetres(Length length) => length.Millimetres.ToString("0.#", CultureInfo.InvariantCulture) + " mm";
}
