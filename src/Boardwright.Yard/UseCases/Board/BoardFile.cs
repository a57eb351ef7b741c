using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Wood;

namespace Boardwright.Yard.UseCases;

/// <summary>A board with its defects as written in a file.</summary>
internal sealed record BoardFile
{
    public const string Keys = "species thickness_quarters width_mm length_m kiln_dried? faces:[{name defects:[{kind x_mm y_mm width_mm length_mm}]}], x along from the left end, y across from the lower edge, both faces from the same end and edge";

    public string? Species { get; init; }

    public double? ThicknessQuarters { get; init; }

    public double? WidthMm { get; init; }

    public double? LengthM { get; init; }

    public bool KilnDried { get; init; }

    public IReadOnlyList<FaceFile>? Faces { get; init; }

    /// <summary>Said when one face only was described.</summary>
    public string? Assumed => Faces is { Count: 1 } ? "the reverse was not described: graded as if it were clear" : null;

    public Outcome<Species?> KnownSpecies() => Species is { Length: > 0 } name
        ? SpeciesTable.Find("FILE, species", name).Then(species => new Outcome<Species?>.Done(species))
        : new Outcome<Species?>.Done(null);

    public Outcome<GradedBoard> Board()
    {
        var refusals = new List<Refusal>();
        var quarters = ThicknessQuarters ?? 4.0;
        if (quarters is not (>= 1.0 and <= 48.0) || quarters != Math.Floor(quarters))
            refusals.Add(new("FILE, thickness_quarters", Text(ThicknessQuarters), "a whole number from 1 to 48; 4 is 4/4"));
        var width = Size("width_mm", WidthMm, 0.001, refusals);
        var length = Size("length_m", LengthM, 1.0, refusals);
        if (Faces is not { Count: 1 or 2 })
            refusals.Add(new("FILE, faces", $"{Faces?.Count ?? 0} faces", "one or two faces, each with its defects (none: \"defects\": [])"));
        var faces = (Faces ?? []).Select((face, index) => new BoardFace(face.Name ?? (index == 0 ? "a" : "b"), [.. (face.Defects ?? []).Select((defect, number) => Defect($"faces[{index}].defects[{number}]", defect, refusals)).OfType<BoardDefect>()])).ToList();
        return refusals.Count > 0
            ? new Outcome<GradedBoard>.Refused(refusals)
            : new GradedBoard(NominalThickness.FromQuarters((int)quarters), width, length, faces[0], faces.Count > 1 ? faces[1] : new BoardFace("reverse", []), KilnDried);
    }

    private static BoardDefect? Defect(string what, DefectFile defect, List<Refusal> refusals)
    {
        var kind = DefectWords.Find(defect.Kind);
        if (kind is null)
            refusals.Add(new($"FILE, {what}.kind", defect.Kind ?? "nothing", DefectWords.Accepted));
        var before = refusals.Count;
        var (x, y) = (Size($"{what}.x_mm", defect.XMm, 0.001, refusals), Size($"{what}.y_mm", defect.YMm, 0.001, refusals));
        var (across, along) = (Size($"{what}.width_mm", defect.WidthMm, 0.001, refusals), Size($"{what}.length_mm", defect.LengthMm, 0.001, refusals));
        return kind is { } known && refusals.Count == before ? new BoardDefect(known, x, y, along, across) : null;
    }

    private static Length Size(string what, double? given, double metresPerUnit, List<Refusal> refusals)
    {
        if (given is { } number && Length.Accepts(number * metresPerUnit))
            return Length.FromMetres(number * metresPerUnit);
        refusals.Add(new($"FILE, {what}", Text(given), "a number, 0 or more"));
        return default;
    }

    private static string Text(double? given) => given?.ToString(CultureInfo.InvariantCulture) ?? "nothing";
}

internal sealed record FaceFile(string? Name, IReadOnlyList<DefectFile>? Defects);

internal sealed record DefectFile(string? Kind, double? XMm, double? YMm, double? WidthMm, double? LengthMm);
