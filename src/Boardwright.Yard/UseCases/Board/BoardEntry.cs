using Boardwright.Quantities;
using Boardwright.Quantities.Reading;
using Boardwright.Sawing;
using Boardwright.Wood;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>One defect as typed: a bare figure is in inches.</summary>
public sealed record DefectEntry(string? Face, string? Kind, string? FromEnd, string? FromEdge, string? Along, string? Across)
{
    /// <summary>Nothing was written in the line.</summary>
    public bool IsBlank => new[] { FromEnd, FromEdge, Along, Across }.All(string.IsNullOrWhiteSpace);
}

/// <summary>A board as typed by hand: a bare width is in inches, a bare length in feet.</summary>
public sealed record BoardEntry(string? Species, string? Thickness, string? Width, string? Length, bool KilnDried, IReadOnlyList<DefectEntry> Defects)
{
    private const int CutsShown = 3;
    private const double WidestM = 1.5;

    /// <summary>Names of the two faces.</summary>
    public static IReadOnlyList<string> FaceNames { get; } = ["a", "b"];

    /// <summary>The grade of the board, every wrong field at once; its value and that of its cuts where the house has prices of its wood.</summary>
    /// <param name="state">The yard with its prices; null to tell cuts apart by grade alone.</param>
    public Outcome<Judged> Judge(YardState? state = null)
    {
        var refusals = new List<Refusal>();
        var thickness = Take(refusals, QuartersTyped.Of(null, "Thickness", Thickness));
        var width = Take(refusals, SizeTyped.Across("Width", Width, "in", Quantities.Length.FromMetres(WidestM), "the widest board there is").Then<Length>(size => size.Length));
        var length = Take(refusals, SizeTyped.Along("Length", Length, "ft", SizeTyped.Longest(null)).Then<Length>(size => size.Length));
        var faces = FaceNames.Select(name => new BoardFace(name, [.. Defects.Select((line, index) => (line, index)).Where(pair => !pair.line.IsBlank && (pair.line.Face ?? "a") == name)
            .Select(pair => Defect($"Defect {pair.index + 1}", pair.line, refusals)).OfType<BoardDefect>()])).ToList();
        return refusals.Count > 0
            ? new Outcome<Judged>.Refused(refusals)
            : BoardGrade.Of(new GradedBoard(thickness, width, length, faces[0], faces[1], KilnDried)).Then(graded => Judged.Of(graded, HousePrices(state, thickness), BoardRemaking.UsualKerf, CutsShown));
    }

    /// <summary>What the standard grades leave out for the species typed.</summary>
    public string SpeciesRule() => SpeciesRules.Words(SpeciesTable.Find("Species", Species ?? "") is Outcome<Species>.Done(var known) ? known : null);

    // FAS one face and Selects are sold with FAS (common practice, no source); below No. 2A one price holds.
    private IReadOnlyList<BoardPrice>? HousePrices(YardState? state, NominalThickness thickness)
    {
        if (state is null || SpeciesTable.Find("Species", Species ?? "") is not Outcome<Species>.Done(var known) || state.Prices.GetValueOrDefault(known.CommonName) is not { } priced)
            return null;

        var premium = 1.0 + ((state.Setting($"premium_{thickness.Quarters}_4") ?? 0.0) / 100.0);
        return
        [
            .. new (LumberGrade Grade, double Money)[] { (LumberGrade.Selects, (double)priced.DryFasMoney), (LumberGrade.No1Common, (double)priced.Dry1cMoney), (LumberGrade.No2ACommon, (double)priced.Dry2aMoney), (LumberGrade.No3BCommon, state.Setting("below_2a") ?? 0.0) }
                .Select(row => new BoardPrice(thickness, row.Grade.Brief(), default, default, row.Money * premium)),
        ];
    }

    private static BoardDefect? Defect(string what, DefectEntry line, List<Refusal> refusals)
    {
        var kind = DefectWords.Find(line.Kind);
        if (kind is null)
            refusals.Add(new($"{what}, kind", line.Kind ?? "", DefectWords.Accepted));
        var before = refusals.Count;
        var (fromEnd, fromEdge) = (Take(refusals, Read.Length($"{what}, from the left end", With(line.FromEnd, "in"))), Take(refusals, Read.Length($"{what}, from the lower edge", With(line.FromEdge, "in"))));
        var (along, across) = (Take(refusals, Read.Length($"{what}, along", With(line.Along, "in"))), Take(refusals, Read.Length($"{what}, across", With(line.Across, "in"))));
        return kind is { } known && refusals.Count == before ? new BoardDefect(known, fromEnd, fromEdge, along, across) : null;
    }

    private static string With(string? text, string unit) => text?.Trim() is { Length: > 0 } given ? char.IsAsciiDigit(given[^1]) ? given + unit : given : "";

    private static T Take<T>(List<Refusal> refusals, Outcome<T> outcome)
        where T : struct
    {
        if (outcome is Outcome<T>.Done(var value))
            return value;
        refusals.AddRange(((Outcome<T>.Refused)outcome).Reasons);
        return default;
    }
}
