using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>Scales a log by a rule.</summary>
/// <remarks>
/// <para>Validity: small end 1 to 100 in, length 1 to 60 ft; Scribner whole inches of 6 to 40 and lengths to 40 ft. Diameters and length are used as given:
/// rounding a diameter to the inch and a length to its nominal step are acts of the scaler (<see cref="ScalingDiameter"/>, <see cref="NominalLength"/>).</para>
/// <para>Rounding: Doyle, Scribner and Ontario to the board foot, halves up; Decimal C in tens with its exceptions; International to 5, at least 5.
/// The net is the rounded gross less the unrounded deductions, to the board foot, halves up.</para>
/// </remarks>
/// <method page="docs/methods/log-scale.md"/>
public static class LogScale
{
    /// <summary>Taper assumed where only one end was measured: inches of diameter per foot, the half inch per 4 ft of the International rule.</summary>
    public const double AssumedTaperInPerFt = 0.125;

    /// <summary>Diameters above this are as likely a reading in centimetres; the answer says so.</summary>
    public const double SuspectDiameterIn = 48.0;

    /// <summary>The log under a rule.</summary>
    /// <returns>The scale; a refusal for sizes a rule does not cover; no answer for a rule whose table is not held.</returns>
    public static Outcome<ScaledLog> Of(LogRule rule, MeasuredLog log)
    {
        ArgumentNullException.ThrowIfNull(log);
        if (rule == LogRule.Roy)
            return new Outcome<ScaledLog>.NoAnswer("The Roy rule exists only as a table, and that table is not held here yet; International 1/4 is used beside it in Quebec.");

        var refusals = LogValidity.Of(rule, log).ToList();
        return refusals.Count > 0 ? new Outcome<ScaledLog>.Refused(refusals) : LogRules.IsCubic(rule) ? Cubic(rule, log) : InBoardFeet(rule, log);
    }

    private static ScaledLog InBoardFeet(LogRule rule, MeasuredLog log)
    {
        var lengthFt = log.Length.Feet;
        var unrounded = Formula(rule, log.SmallEnd.Inches, lengthFt);
        var gross = Rounded(rule, log.SmallEnd.Inches, lengthFt);
        var deductions = LogDeductions.Of(log, gross, diameterIn => Rounded(rule, diameterIn, lengthFt)).ToList();
        var net = TradeRounding.NearestHalfUp(Math.Max(0.0, gross - deductions.Sum(one => one.BoardFeet)));
        var (largeEnd, assumed) = LargeEnd(log);
        return new(rule, unrounded, BoardFeet.From(gross), deductions, BoardFeet.From(deductions.Count == 0 ? gross : net),
            Volume.FromCubicMetres(CubicVolume.Smalian(log.SmallEnd.Metres, largeEnd, log.Length.Metres)), assumed, Note(rule, log));
    }

    private static ScaledLog Cubic(LogRule rule, MeasuredLog log)
    {
        var (largeEnd, assumed) = rule == LogRule.Huber && log.Middle is not null ? (0.0, null) : LargeEnd(log);
        var middle = log.Middle?.Metres ?? (log.SmallEnd.Metres + largeEnd) / 2.0;
        if (rule != LogRule.Smalian && log.Middle is null)
            assumed = string.Join("; ", new[] { assumed, Invariant($"middle {middle / 0.0254:0.##} in: half way between the ends, straight taper") }.OfType<string>());

        var volume = rule switch
        {
            LogRule.Smalian => CubicVolume.Smalian(log.SmallEnd.Metres, largeEnd, log.Length.Metres),
            LogRule.Huber => CubicVolume.Huber(middle, log.Length.Metres),
            _ => CubicVolume.Newton(log.SmallEnd.Metres, middle, largeEnd, log.Length.Metres),
        };
        return new(rule, null, null, [], null, Volume.FromCubicMetres(volume), assumed, Note(rule, log));
    }

    private static (double Metres, string? Assumed) LargeEnd(MeasuredLog log)
    {
        if (log.LargeEnd is { } measured)
            return (measured.Metres, null);

        var inches = log.SmallEnd.Inches + AssumedTaperInPerFt * log.Length.Feet;
        return (inches * 0.0254, Invariant($"large end {inches:0.##} in: small end + 1/8 in per foot of length"));
    }

    private static double Formula(LogRule rule, double diameterIn, double lengthFt) => rule switch
    {
        LogRule.Doyle => DoyleRule.BoardFeet(diameterIn, lengthFt),
        LogRule.Scribner or LogRule.ScribnerDecimalC => LogValidity.InScribnerTable(diameterIn) ? ScribnerRule.BoardFeet((int)Math.Round(diameterIn), lengthFt) : 0.0,
        LogRule.InternationalQuarter => InternationalRule.BoardFeet(diameterIn, lengthFt, InternationalRule.QuarterInchKerf),
        LogRule.InternationalEighth => InternationalRule.BoardFeet(diameterIn, lengthFt, InternationalRule.EighthInchKerf),
        LogRule.Ontario => OntarioRule.BoardFeet(diameterIn, lengthFt),
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "Accepted: a rule in board feet."),
    };

    private static double Rounded(LogRule rule, double diameterIn, double lengthFt)
    {
        var formula = Formula(rule, diameterIn, lengthFt);
        return rule switch
        {
            LogRule.ScribnerDecimalC => LogValidity.InScribnerTable(diameterIn) ? ScribnerRule.DecimalC((int)Math.Round(diameterIn), lengthFt) : 0.0,
            LogRule.InternationalQuarter or LogRule.InternationalEighth => InternationalRule.Rounded(formula),
            _ => TradeRounding.NearestHalfUp(formula),
        };
    }

    private static string? Note(LogRule rule, MeasuredLog log)
    {
        var notes = new List<string>();
        if (log.SmallEnd.Inches > SuspectDiameterIn)
            notes.Add(Invariant($"{log.SmallEnd.Inches:0.#} in is a very large log: was {log.SmallEnd.Inches:0.#} cm meant, which is {log.SmallEnd.Inches / 2.54:0.#} in?"));
        if (rule == LogRule.ScribnerDecimalC && !ScribnerRule.HoldsExceptions(log.Length.Feet))
            notes.Add("The printed exceptions of Decimal C are held for 8, 10, 12, 14 and 16 ft; at this length the ticket of a scaler may differ by 10 bf");
        if (rule is LogRule.Ontario)
            notes.Add("Ontario formula from memory, not yet compared with the printed manual");
        return notes.Count == 0 ? null : string.Join("; ", notes);
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
