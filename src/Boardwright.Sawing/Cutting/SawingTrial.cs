using System.Globalization;

namespace Boardwright.Sawing;

/// <summary>Carries out the cuts of a plan on boxes of wood: each cut parts the piece on the bed, and at the end every board is a piece of its own thickness.</summary>
internal static class SawingTrial
{
    /// <summary>Wood between faces, in the first lie; infinite where it still has bark.</summary>
    internal sealed record Piece(double X0, double X1, double Y0, double Y1)
    {
        public bool Holds(PlanCheck.Box box, double slack) => box.X0 >= X0 - slack && box.X1 <= X1 + slack && box.Y0 >= Y0 - slack && box.Y1 <= Y1 + slack;

        public bool Meets(PlanCheck.Box box) => box.X1 > X0 && box.X0 < X1 && box.Y1 > Y0 && box.Y0 < Y1;
    }

    public static IEnumerable<string> Faults(SawingRules rules, CuttingPlan plan, IReadOnlyList<PlanCheck.Box> boxes)
    {
        var faults = new List<string>();
        var (pieces, _) = Carried(rules, plan, boxes, faults);
        faults.AddRange(boxes.Where(box => !IsFree(pieces, plan.Boards[box.Number - 1], box, rules.Kerf.Millimetres)).Select(box => $"board {box.Number} is not cut free at its thickness"));
        return faults;
    }

    /// <summary>What the cuts leave, and what they turn to dust.</summary>
    public static (List<Piece> Pieces, List<Piece> Kerfs) Carried(SawingRules rules, CuttingPlan plan, IReadOnlyList<PlanCheck.Box> boxes, List<string>? faults = null)
    {
        faults ??= [];
        var (kerf, kerfs) = (rules.Kerf.Millimetres, new List<Piece>());
        var pieces = new List<Piece> { new(double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity) };
        foreach (var opening in plan.Openings)
        {
            var turn = (((int)Math.Round((opening.Turn.Degrees - plan.Rotation.Degrees) / 90.0) % 4) + 4) % 4;
            var height = double.PositiveInfinity;
            foreach (var cut in opening.Cuts)
            {
                if (cut.Height.Millimetres > height - kerf + 1e-6)
                    faults.Add(string.Create(CultureInfo.InvariantCulture, $"{opening.Part}: a cut at {cut.Height.Millimetres:0.###} mm after one at {height:0.###} mm"));
                height = cut.Height.Millimetres;
                Cut(pieces, kerfs, boxes, cut.Frees.Concat(Later(plan, opening, cut)), turn, opening.BedMm + height, kerf, faults);
            }
        }

        return (pieces, kerfs);
    }

    // The piece on the bed is the one that holds the boards this cut frees or that later cuts of the opening free.
    private static IEnumerable<int> Later(CuttingPlan plan, PlanOpening opening, PlanCut cut) =>
        opening.Cuts.SkipWhile(one => one != cut).Concat(plan.Openings.SkipWhile(one => one != opening).Skip(1).Where(one => one.Part.StartsWith(opening.Part, StringComparison.Ordinal)).SelectMany(one => one.Cuts))
            .SelectMany(one => one.Frees);

    private static void Cut(List<Piece> pieces, List<Piece> kerfs, IReadOnlyList<PlanCheck.Box> boxes, IEnumerable<int> of, int turn, double low, double kerf, List<string> faults)
    {
        var wanted = of.Distinct().Select(number => boxes[number - 1]).ToList();
        foreach (var piece in pieces.Where(piece => wanted.Count == 0 ? pieces.Count == 1 : wanted.Any(piece.Meets)).ToList())
        {
            var (under, over) = Part(piece, turn, low, kerf);
            if (under is null || over is null)
                continue;

            pieces.Remove(piece);
            pieces.AddRange([under, over]);
            kerfs.Add(turn % 2 == 0 ? piece with { Y0 = Math.Min(under.Y1, over.Y1), Y1 = Math.Max(under.Y0, over.Y0) } : piece with { X0 = Math.Min(under.X1, over.X1), X1 = Math.Max(under.X0, over.X0) });
            faults.AddRange(boxes.Where(box => piece.Holds(box, 1e-6) && !under.Holds(box, 1e-6) && !over.Holds(box, 1e-6)).Select(box => $"a cut goes through board {box.Number}"));
        }
    }

    /// <summary>A level cut after some quarter turns clockwise, in the first lie: the bed's up is y, then -x, -y, x.</summary>
    private static (Piece? Under, Piece? Over) Part(Piece piece, int turn, double low, double kerf)
    {
        // A cut may lie right on a sawn face: a slice without thickness falls off.
        var (high, slack) = (low + kerf, 1e-6);
        return turn switch
        {
            0 when low > piece.Y0 - slack && high < piece.Y1 + slack => (piece with { Y1 = low }, piece with { Y0 = high }),
            1 when -low < piece.X1 + slack && -high > piece.X0 - slack => (piece with { X0 = -low }, piece with { X1 = -high }),
            2 when -low < piece.Y1 + slack && -high > piece.Y0 - slack => (piece with { Y0 = -low }, piece with { Y1 = -high }),
            3 when low > piece.X0 - slack && high < piece.X1 + slack => (piece with { X1 = low }, piece with { X0 = high }),
            _ => (null, null),
        };
    }

    private static bool IsFree(List<Piece> pieces, PlannedBoard board, PlanCheck.Box box, double kerf)
    {
        var piece = pieces.FirstOrDefault(piece => piece.Holds(box, 1e-6));
        return piece is not null && Math.Min(piece.X1 - piece.X0, piece.Y1 - piece.Y0) <= board.Green.Millimetres + (kerf / 2.0);
    }
}
