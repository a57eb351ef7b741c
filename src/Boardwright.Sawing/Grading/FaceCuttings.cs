using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>What cuttings on a face have to be.</summary>
internal enum CuttingQuality
{
    /// <summary>Clear on this face; the reverse is not looked at.</summary>
    ClearFace,

    /// <summary>Clear on this face and sound on the reverse.</summary>
    ClearAndSoundReverse,

    /// <summary>Sound on both faces.</summary>
    Sound,
}

/// <summary>The cuttings of one face of a board, searched once for each question.</summary>
internal sealed class FaceCuttings
{
    // About a second of search. Reached only with five cuttings and more.
    private const long EffortMax = 200_000;
    private const int CuttingsMax = 200;

    private readonly GradedBoard board;
    private readonly BoardFace face;
    private readonly BoardFace reverse;
    private readonly FaceBox whole;
    private readonly Dictionary<(CuttingQuality, CuttingSize), CuttingSearch> searches = [];

    public FaceCuttings(GradedBoard board, BoardFace face)
    {
        (this.board, this.face) = (board, face);
        reverse = ReferenceEquals(face, board.First) ? board.Second : board.First;
        whole = new FaceBox(0L, Nanometres(board.Length), 0L, Nanometres(board.Width));
    }

    public BoardFace Face => face;

    public FaceBox Whole => whole;

    /// <summary>The defects of this face that a test picks, as boxes inside the board.</summary>
    public IEnumerable<FaceBox> Boxes(Func<DefectKind, bool> which) => Boxes(face, which);

    /// <summary>The most this face yields in one way.</summary>
    public CuttingYield Take(GradeRule rule, GradeYield way, CuttingQuality quality, int surfaceMeasure)
    {
        var obstacles = Obstacles(quality).Distinct().ToList();
        var required = way.Required(surfaceMeasure);
        return way switch
        {
            { Way: CuttingWay.WholeFace } => WholeFace(way, obstacles),
            { Way: CuttingWay.FullWidth } => Found(way, required, FullWidth(obstacles, way.Cuttings!.Value), null),
            { Cuttings: null } => Greedy(rule, way, required, obstacles),
            _ => Searched(rule, way, required, quality, obstacles),
        };
    }

    private CuttingYield Searched(GradeRule rule, GradeYield way, double required, CuttingQuality quality, List<FaceBox> obstacles)
    {
        if (!searches.TryGetValue((quality, rule.Size), out var search))
        {
            var effort = new SearchEffort(EffortMax);
            searches[(quality, rule.Size)] = search = new CuttingSearch(whole, new FaceObstacles(obstacles, rule.Size, effort), rule.Size, effort);
        }

        var best = search.Best(whole, way.Cuttings!.Value);
        return Found(way, required, best.Cuttings, search.Ceiling(whole, way.Cuttings.Value));
    }

    // Without a limit to their number: the largest first, then the largest of what is left. All the wood within reach is the ceiling.
    private CuttingYield Greedy(GradeRule rule, GradeYield way, double required, List<FaceBox> obstacles)
    {
        var effort = new SearchEffort(long.MaxValue);
        var ceiling = new ReachableWood(whole, new FaceObstacles(obstacles, rule.Size, effort)).Area(whole);
        var cuttings = new List<FaceBox>();
        while (cuttings.Count < CuttingsMax && new FaceObstacles(obstacles.Concat(cuttings), rule.Size, effort).Largest(whole) is { } next)
            cuttings.Add(next);
        return Found(way, required, cuttings, ceiling);
    }

    private CuttingYield WholeFace(GradeYield way, List<FaceBox> obstacles)
    {
        var all = Found(way, 0.0, obstacles.Count == 0 ? [whole] : [], null);
        return all with { RequiredUnits = Units(whole.Area) };
    }

    private List<FaceBox> FullWidth(List<FaceBox> obstacles, int count)
    {
        var clear = new List<FaceBox>();
        var left = 0L;
        foreach (var box in obstacles.OrderBy(box => box.Left).Append(whole with { Left = whole.Right }))
        {
            if (box.Left > left)
                clear.Add(whole with { Left = left, Right = box.Left });
            left = Math.Max(left, box.Right);
        }

        return [.. clear.OrderByDescending(box => box.Area).Take(count)];
    }

    private static CuttingYield Found(GradeYield way, double required, IReadOnlyList<FaceBox> boxes, long? ceiling)
    {
        var units = Units(boxes.Sum(box => box.Area));
        return new(way, units, ceiling is { } area ? Units(area) : units, required, [.. boxes.OrderBy(box => box.Left).ThenBy(box => box.Bottom).Select(Shown)]);
    }

    private IEnumerable<FaceBox> Obstacles(CuttingQuality quality) => quality switch
    {
        CuttingQuality.ClearFace => Boxes(DefectKinds.IsInClearFace),
        CuttingQuality.ClearAndSoundReverse => Boxes(DefectKinds.IsInClearFace).Concat(Boxes(reverse, DefectKinds.IsUnsound)),
        _ => Boxes(DefectKinds.IsUnsound).Concat(Boxes(reverse, DefectKinds.IsUnsound)),
    };

    private IEnumerable<FaceBox> Boxes(BoardFace of, Func<DefectKind, bool> which) => of.Defects.Where(defect => which(defect.Kind))
        .Select(defect => new FaceBox(Nanometres(defect.FromLeft), Nanometres(defect.FromLeft + defect.Length), Nanometres(defect.FromEdge), Nanometres(defect.FromEdge + defect.Width)).Within(whole))
        .Where(box => box.Length > 0L && box.Width > 0L);

    private static Cutting Shown(FaceBox box) => new(Metres(box.Left), Metres(box.Bottom), Metres(box.Length), Metres(box.Width));

    private static double Units(long area) => area / (25_400_000.0 * 304_800_000.0);

    private static Length Metres(long nanometres) => Quantities.Length.FromMetres(nanometres * 1e-9);

    private static long Nanometres(Length length) => (long)Math.Round(length.Metres * 1e9);
}
