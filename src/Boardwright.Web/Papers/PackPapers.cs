using Boardwright.Documents;
using Boardwright.Documents.Packs;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;
using TallyBoard = Boardwright.Documents.Packs.TallyBoard;

namespace Boardwright.Web.Papers;

/// <summary>Fills the papers of packs from what the book says. A pack without an agreed tally and proven species gets no paper.</summary>
public static class PackPapers
{
    private const string Rule = "surface measure, board by board";

    /// <summary>The tag of a pack.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="tag">The pack.</param>
    /// <param name="address">Where its page is; the code on the tag leads there.</param>
    /// <param name="paper">The sheet.</param>
    public static Outcome<byte[]> Tag(YardState state, string tag, string address, Paper paper)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Agreed(state, tag).Then<byte[]>(sheet => PackTag.Render(TagContent(state, sheet, address), paper));
    }

    /// <summary>One pack's piece tally.</summary>
    public static Outcome<byte[]> List(YardState state, string tag, Paper paper)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Agreed(state, tag).Then<byte[]>(sheet => PackingList.Render(
            Content(state, sheet.Pack.Order is { } order ? state.Orders.GetValueOrDefault(order) : null, sheet.Pack.Order ?? sheet.Pack.Tag, [TallyContent(state, sheet)]), paper));
    }

    /// <summary>The packing list of an order: every pack of it whose tally is agreed.</summary>
    public static Outcome<byte[]> Order(YardState state, string tag, Paper paper)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (!state.Orders.TryGetValue(tag ?? "", out var order))
            return new Refusal("order", tag ?? "", "an order of the book");
        var sheets = new List<PackSheet>();
        foreach (var pack in order.Packs.Where(pack => state.Packs[pack].Restacked is null))
        {
            if (Agreed(state, pack) is not Outcome<PackSheet>.Done(var sheet))
                return Agreed(state, pack).Then<byte[]>(_ => throw new InvalidOperationException());
            sheets.Add(sheet);
        }

        return sheets.Count == 0
            ? new Outcome<byte[]>.NoAnswer($"No pack is tallied for {tag} yet.")
            : PackingList.Render(Content(state, order, order.Tag, [.. sheets.Select(sheet => TallyContent(state, sheet))]), paper);
    }

    private static Outcome<PackSheet> Agreed(YardState state, string tag) => PackSheet.Of(state, tag).Then<PackSheet>(sheet =>
        !sheet.Pack.Proven ? new Refusal("pack", tag, "a pack of proven species; its tag was lost")
        : sheet.Pack.IsBeingTallied ? new Refusal("pack", tag, "a pack whose tally is closed; somebody is still counting")
        : sheet.Agreed is null ? new Refusal("pack", tag, "a pack whose tally is agreed; two tallies differ, choose one first")
        : sheet);

    private static PackTagContent TagContent(YardState state, PackSheet sheet, string address)
    {
        var (pack, count) = (sheet.Pack, sheet.Agreed!);
        var lengths = count.Measured.Boards.Select(one => one.Board.Length).ToList();
        return new()
        {
            Yard = state.Yard?.Name ?? "Boardwright",
            Pack = pack.Tag,
            Species = pack.Species.CommonName,
            Thickness = Thickness(state, pack),
            Surface = Surface(pack),
            Grade = Grade(state, pack),
            Pieces = count.Measured.Pieces,
            ShortestPiece = lengths.Min(),
            LongestPiece = lengths.Max(),
            Footage = count.Measured.BoardFeet,
            Basis = FootageBasis.Net,
            FootageRule = Rule,
            Volume = count.Measured.Volume,
            Weight = sheet.Weight,
            MoistureLow = sheet.Drying.Low,
            MoistureHigh = sheet.Drying.High,
            MoistureBasis = sheet.Drying.Basis,
            MoistureOrdered = Ordered(sheet),
            IsWetter = sheet.Ordered.IsWetter,
            Charge = sheet.Drying.Charge,
            HeatTreatment = Treated(sheet),
            HeatTreatmentProof = sheet.Drying.Proof,
            Order = pack.Order,
            Customer = pack.Order is { } order ? state.Orders[order].Customer : null,
            Owner = Owner(state, pack),
            Date = DateOnly.FromDateTime(pack.LabelledAt ?? count.Tally.At),
            TalliedBy = count.By,
            CodeText = address,
        };
    }

    private static PackTally TallyContent(YardState state, PackSheet sheet)
    {
        var (pack, count) = (sheet.Pack, sheet.Agreed!);
        return new()
        {
            Pack = pack.Tag,
            Species = pack.Species.CommonName,
            Thickness = Thickness(state, pack),
            Surface = Surface(pack),
            Grade = Grade(state, pack),
            Boards = [.. count.Measured.Boards.Select((one, index) => new TallyBoard(index + 1, one.Board.Width, one.Board.Length, (int)Math.Round(one.Measure.SurfaceMeasure), null, one.Board.Grade))],
            ByLength = [.. count.Measured.Boards.GroupBy(one => (int)Math.Floor(one.Board.Length.Feet + 1e-9)).OrderBy(group => group.Key).Select(group => new LengthSubtotal(
                Length.FromFeet(group.Key), group.Count(), group.Sum(one => (int)Math.Round(one.Measure.SurfaceMeasure)), BoardFeet.From(group.Sum(one => one.Measure.BoardFeet.Count))))],
            Footage = count.Measured.BoardFeet,
            FootageUnrounded = count.Exact,
            Basis = FootageBasis.Net,
            FootageRule = Rule,
            Volume = count.Measured.Volume,
            Weight = sheet.Weight,
            MoistureLow = sheet.Drying.Low,
            MoistureHigh = sheet.Drying.High,
            MoistureBasis = sheet.Drying.Basis,
            MoistureOrdered = Ordered(sheet),
            Charge = sheet.Drying.Charge,
            HeatTreatment = Treated(sheet),
            HeatTreatmentProof = sheet.Drying.Proof,
            TalliedBy = count.By,
            TalliedOn = DateOnly.FromDateTime(count.Tally.At),
        };
    }

    private static PackingListContent Content(YardState state, Order? order, string name, IReadOnlyList<PackTally> packs) => new()
    {
        Yard = state.Yard?.Name ?? "Boardwright",
        Order = name,
        Customer = order?.Customer ?? "stock",
        Promised = order?.Lines[0].PromisedOn ?? order?.Lines[0].Asked.DueOn,
        Date = order?.Lines[0].Shipments.LastOrDefault() is { } shipment ? DateOnly.FromDateTime(state.Shipments[shipment].At) : state.Today,
        Packs = packs,
    };

    // What was asked for stands beside what was measured, and the plain word for their difference.
    private static string? Ordered(PackSheet sheet) => sheet.Ordered.Words is { Length: > 0 } words ? words : null;

    private static HeatTreatment Treated(PackSheet sheet) => sheet.Drying.IsHeatTreated switch { true => HeatTreatment.Yes, false => HeatTreatment.No, null => HeatTreatment.Unproven };

    private static string Thickness(YardState state, Pack pack) => pack.Stage == StackStage.Dressed && state.Stacks[pack.Stack].SawnThickness is { } sawn ? FormattableString.Invariant($"{sawn.Millimetres:0.#} mm") : pack.Thickness.ToString();

    private static string Surface(Pack pack) => pack.Stage == StackStage.Dressed ? "S2S" : "rough";

    // A grade is printed only where every board was given one, or the order names it for all of them.
    private static string Grade(YardState state, Pack pack)
    {
        var grades = (pack.Agreed ?? pack.Tallies[0]).Boards.Select(board => board.Grade).Distinct().ToList();
        return grades is [{ } one] ? one : grades.Count > 1 ? "graded board by board" : Asked(state, pack) is { Length: > 0 } asked ? $"as ordered: {asked}" : "not graded";
    }

    // Neither the moisture asked for nor the surface is a grade: each stands in its own place.
    private static string Asked(YardState state, Pack pack) => pack.Order is { } order && state.Orders[order].Lines.Find(line => line.Asked.Line == (pack.Line ?? 1)) is { } line
        ? string.Join(", ", line.Asked.Specification.Split(',', StringSplitOptions.TrimEntries).Where(part => !part.Contains('%', StringComparison.Ordinal) && part != Surface(pack))) : "";

    private static string? Owner(YardState state, Pack pack) => state.Stacks[pack.Stack].Owner is var owner && owner != "mill" ? owner : null;
}
