using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Tries the grades on a board, best first.</summary>
internal sealed class BoardGrader
{
    private static readonly LumberGrade[] Better = [LumberGrade.FasOneFace, LumberGrade.Selects];

    private readonly GradedBoard board;
    private readonly FaceCuttings[] faces;
    private readonly int sm;
    private readonly int standardFt;

    public BoardGrader(GradedBoard board)
    {
        this.board = board;
        faces = [new(board, board.First), new(board, board.Second)];
        sm = new SurfaceMeasure().Next(board.Width.Inches, board.Length.Feet);
        standardFt = TradeRounding.WholeDown(board.Length.Feet);
    }

    public BoardGrade Grade()
    {
        var trials = new List<GradeTrial>();
        foreach (var trial in All())
        {
            trials.Add(trial);
            if (trial.IsMade)
                break;
        }

        return new(board, sm, BoardFeet.From(sm * BoardMeasure.CountedThicknessIn(board.Thickness.Inches)), trials);
    }

    private IEnumerable<GradeTrial> All()
    {
        yield return PoorFace(GradeRule.Fas);
        foreach (var grade in Better)
            yield return BetterFace(grade);
        foreach (var rule in GradeRule.PoorFace.Skip(1))
            yield return rule.Grade == LumberGrade.No3ACommon ? No3A(rule) : PoorFace(rule);
    }

    // Both faces must make it; the one that yields less for what it needs is the poor face.
    private GradeTrial PoorFace(GradeRule rule)
    {
        if (TooSmall(rule) is { } small)
            return new(rule.Grade, null, null, [small], false);

        var quality = rule.Clear ? CuttingQuality.ClearAndSoundReverse : CuttingQuality.Sound;
        var checks = faces.Select(face => Check(face, rule, quality, Limits(face, rule))).ToList();
        var poor = checks.OrderBy(check => check.Yield is { } found ? found.Units - found.RequiredUnits : double.NegativeInfinity).First();
        return Trial(rule.Grade, poor, checks);
    }

    // Either face may be the better one; the reverse is judged by itself.
    private GradeTrial BetterFace(LumberGrade grade)
    {
        var rule = grade == LumberGrade.Selects ? GradeRule.Selects : GradeRule.Fas;
        if (TooSmall(rule) is { } small)
            return new(grade, null, null, [small], false);

        var narrow = board.Width.Inches < GradeRule.Fas.BoardWidthMinIn - Scant - 1e-9;
        var common = GradeRule.PoorFace[1];
        return faces.Select((face, index) =>
        {
            var reverse = faces[1 - index];
            var better = Check(face, rule, CuttingQuality.ClearFace, narrow ? FaceLimits.Wane(board, face.Face) : FaceLimits.OfFas(board, face, sm));
            var other = Check(reverse, common, CuttingQuality.ClearFace, FaceLimits.OfNo1Common(board, reverse.Face).Concat(FaceLimits.Wane(board, reverse.Face)));
            return Trial(grade, better, [better, other]);
        }).OrderBy(trial => trial.IsMade ? 0 : trial.Faults.Count).ThenBy(trial => trial.Yield?.ShortUnits ?? double.MaxValue).ThenByDescending(trial => trial.Yield?.Units ?? 0.0).First();
    }

    // A board that is No. 2A on its better face, the reverse of the cuttings sound, makes No. 3A as well.
    private GradeTrial No3A(GradeRule rule)
    {
        var plain = PoorFace(rule);
        if (plain.IsMade || TooSmall(rule) is not null)
            return plain;

        var second = GradeRule.PoorFace[2];
        var better = faces.Select(face => Check(face, second, CuttingQuality.ClearAndSoundReverse, [])).Where(check => check.Faults.Count == 0).MaxBy(check => check.Yield!.Units);
        return better is null ? plain : Trial(rule.Grade, better, [better]);
    }

    private IEnumerable<string> Limits(FaceCuttings face, GradeRule rule) => rule.Grade switch
    {
        LumberGrade.Fas => FaceLimits.OfFas(board, face, sm),
        LumberGrade.No1Common => FaceLimits.OfNo1Common(board, face.Face),
        _ => [],
    };

    private FaceCheck Check(FaceCuttings face, GradeRule rule, CuttingQuality quality, IEnumerable<string> limits)
    {
        var yields = new List<CuttingYield>();
        foreach (var way in rule.Yields(sm, board.Width))
        {
            yields.Add(face.Take(rule, way, quality, sm));
            if (yields[^1].IsMet)
                break;
        }

        var best = yields.FirstOrDefault(found => found.IsMet) ?? yields.MinBy(found => found.ShortUnits);
        var faults = limits.ToList();
        var open = faults.Count == 0 && yields.Any(found => found.IsOpen) && best is { IsMet: false };
        if (best is null)
            faults.Add($"face {face.Face.Name}: a surface measure of {sm} allows no cutting");
        else if (!best.IsMet)
            faults.Add(Short(face.Face, best));
        return new(face.Face, best, faults, open);
    }

    private static string Short(BoardFace face, CuttingYield found) => found.Way switch
    {
        { Way: CuttingWay.WholeFace } => $"face {face.Name}: not clear all over",
        { Cuttings: null } => Units(face, found, "any number of cuttings"),
        { Cuttings: 1 } => Units(face, found, "1 cutting"),
        { Cuttings: var count, Way: CuttingWay.FullWidth } => Units(face, found, $"{count} cuttings of full width"),
        { Cuttings: var count } => Units(face, found, $"{count} cuttings"),
    };

    private static string Units(BoardFace face, CuttingYield found, string cuttings) =>
        string.Create(CultureInfo.InvariantCulture, $"face {face.Name}: {found.Units:0.##} of {found.RequiredUnits:0.##} cutting units in {cuttings}");

    private string? TooSmall(GradeRule rule)
    {
        var widthMin = rule.BoardWidthMinIn - Scant;
        return board.Width.Inches >= widthMin - 1e-9 && standardFt >= rule.BoardLengthMinFt
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"the board is {board.Width.Inches:0.##} in by {standardFt} ft (at least {widthMin:0.##} in by {rule.BoardLengthMinFt} ft)");
    }

    private double Scant => board.KilnDried ? 0.25 : 0.0;

    private static GradeTrial Trial(LumberGrade grade, FaceCheck deciding, IReadOnlyList<FaceCheck> all) => new(
        grade, deciding.Face, deciding.Yield, [.. all.SelectMany(check => check.Faults)], all.All(check => check.Faults.Count == 0 || check.IsOpen) && all.Any(check => check.IsOpen));

    private sealed record FaceCheck(BoardFace Face, CuttingYield? Yield, IReadOnlyList<string> Faults, bool IsOpen);
}
