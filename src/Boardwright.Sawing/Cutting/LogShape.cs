using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>The shape of a log for a cutting plan: sections, ruled straight from one to the next, and a core of rot along the centre.</summary>
/// <remarks>
/// <para>Between two neighbouring sections the log is the convex hull of both, so a prism that lies in both lies in the wood between them.</para>
/// <para>Sweep bows the centre upward in the unturned log by a parabola through both ends.</para>
/// </remarks>
/// <method page="docs/methods/sawing-plan.md"/>
public sealed record LogShape
{
    /// <summary>Largest diameter a plan is made for, inches.</summary>
    public const double DiameterMaxIn = 60.0;

    /// <summary>Longest log a plan is made for, feet.</summary>
    public const double LengthMaxFt = 40.0;

    private const double DiameterMinIn = 3.0;
    private const double LengthMinFt = 1.0;
    private const double Slack = 1e-9;
    private const int SweepPanels = 16;

    private LogShape(IReadOnlyList<LogSection> sections, Length rot)
    {
        Sections = sections;
        RotDiameter = rot;
    }

    /// <summary>Sections from the small end (at zero) to the large end, at least two.</summary>
    public IReadOnlyList<LogSection> Sections { get; }

    /// <summary>Diameter of rotten or shaken wood around the centre, from end to end; zero when sound.</summary>
    public Length RotDiameter { get; }

    /// <summary>Whole length.</summary>
    public Length Length => Sections[^1].At;

    /// <summary>Every turn of the log gives the same plan.</summary>
    public bool IsRoundAndStraight => Sections.All(one => one.RadiiMm is null && one.DiameterX == one.DiameterY && one.OffsetXMm == 0.0 && one.OffsetYMm == 0.0);

    /// <summary>The log seen in a mirror is the same log: a turn one way gives what the same turn the other way gives.</summary>
    public bool IsMirrored => Sections.All(one => one.RadiiMm is null) && (Sections.All(one => one.OffsetXMm == 0.0) || Sections.All(one => one.OffsetYMm == 0.0));

    /// <summary>Solid volume, rot and what lies beyond hollows included.</summary>
    public Volume Volume => Volume.FromCubicMetres(Sections.Zip(Sections.Skip(1), Between).Sum());

    /// <summary>A log of two round ends, tapering straight, bowed where it has sweep.</summary>
    /// <param name="smallEnd">Diameter inside bark at the small end, 3 to 60 in.</param>
    /// <param name="largeEnd">At the large end; at least the small end.</param>
    /// <param name="length">Whole length, 1 to 40 ft.</param>
    /// <param name="sweep">Greatest departure of the centre from the straight line, up to one diameter.</param>
    /// <param name="rot">Diameter of rot around the centre; less than the small end.</param>
    public static Outcome<LogShape> Straight(Length smallEnd, Length largeEnd, Length length, Length sweep = default, Length rot = default) => largeEnd < smallEnd
        ? new Refusal("large_end", Inches(largeEnd), $"at least the small end, {Inches(smallEnd)}")
        : Measured([new(default, smallEnd, smallEnd), new(length, largeEnd, largeEnd)], sweep, rot);

    /// <summary>A log of measured sections.</summary>
    /// <param name="sections">In order from the small end, the first at zero.</param>
    /// <param name="sweep">Bow on top of the offsets of the sections.</param>
    /// <param name="rot">Diameter of rot around the centre.</param>
    /// <param name="towards">Where the bow points: clockwise from upright, looking at the small end.</param>
    public static Outcome<LogShape> Measured(IReadOnlyList<LogSection> sections, Length sweep = default, Length rot = default, Angle towards = default)
    {
        ArgumentNullException.ThrowIfNull(sections);
        if (Wrong(sections, sweep, rot) is { } refusal)
            return refusal;

        return new LogShape(sweep.Metres > 0.0 ? Bowed(sections, sweep.Millimetres, towards) : [.. sections], rot);
    }

    /// <summary>What is left between the ends of splits: no board reaches into them.</summary>
    /// <param name="smallEnd">Length lost at the small end.</param>
    /// <param name="largeEnd">Length lost at the large end.</param>
    /// <returns>The shorter shape; refused where less than a foot is left.</returns>
    public Outcome<LogShape> Trimmed(Length smallEnd, Length largeEnd)
    {
        if (smallEnd.Metres <= 0.0 && largeEnd.Metres <= 0.0)
            return this;

        var (from, to) = (smallEnd.Metres, Length.Metres - largeEnd.Metres);
        if ((to - from) / 0.3048 < LengthMinFt - Slack)
            return new Refusal("splits", string.Create(CultureInfo.InvariantCulture, $"{smallEnd.Inches:0.#} and {largeEnd.Inches:0.#} in"), $"a foot left of the {Feet(Length)} between them");

        List<double> places = [from, .. Sections.Select(one => one.At.Metres).Where(at => at > from && at < to), to];
        return new LogShape([.. places.Select(at => At(Sections, at) with { At = Length.FromMetres(at - from) })], RotDiameter);
    }

    private static Refusal? Wrong(IReadOnlyList<LogSection> sections, Length sweep, Length rot)
    {
        if (sections.Count < 2 || sections[0].At.Metres != 0.0 || sections.Zip(sections.Skip(1)).Any(pair => pair.Second.At <= pair.First.At))
            return new("sections", $"{sections.Count} sections", "two or more, in order along the log, the first at 0");
        if (sections[^1].At.Feet is < LengthMinFt - Slack or > LengthMaxFt + Slack)
            return new("length", Feet(sections[^1].At), "1 to 40 ft (0.31 to 12.19 m)");

        foreach (var section in sections)
        {
            if (section.DiameterX.Inches is < DiameterMinIn - Slack or > DiameterMaxIn + Slack || section.DiameterY.Inches is < DiameterMinIn - Slack or > DiameterMaxIn + Slack)
                return new("diameter", $"{Inches(section.DiameterX)} x {Inches(section.DiameterY)}", "3 to 60 in (76 to 1524 mm), inside bark");
            if (!(Math.Max(Math.Abs(section.OffsetXMm), Math.Abs(section.OffsetYMm)) <= section.DiameterX.Millimetres))
                return new("offset", string.Create(CultureInfo.InvariantCulture, $"{section.OffsetXMm:0.#}, {section.OffsetYMm:0.#} mm"), "at most one diameter of the section");
            if (WrongRadii(section, sections[0].RadiiMm?.Count) is { } wrong)
                return wrong;
        }

        var least = sections.Min(one => Math.Min(one.DiameterX.Inches, one.DiameterY.Inches));
        return sweep.Inches > least ? new("sweep", Inches(sweep), $"at most one diameter, {least:0.##} in")
            : rot.Inches >= least ? new("rot", Inches(rot), $"less than the smallest diameter, {least:0.##} in")
            : null;
    }

    private static Refusal? WrongRadii(LogSection section, int? count)
    {
        if (section.RadiiMm?.Count != count || count < LogSection.RadiiMin)
            return new("radii", $"{section.RadiiMm?.Count ?? 0}", $"{LogSection.RadiiMin} or more at equal angles, as many in every section, or none in any");
        foreach (var radius in section.RadiiMm ?? [])
        {
            if (!(radius is >= DiameterMinIn * 12.7 and <= DiameterMaxIn * 12.7))
                return new("radii", radius.ToString("0.#", CultureInfo.InvariantCulture) + " mm", "38.1 to 762 mm");
        }

        return null;
    }

    private static IReadOnlyList<LogSection> Bowed(IReadOnlyList<LogSection> sections, double sweepMm, Angle towards)
    {
        var (sin, cos) = (Math.Round(Math.Sin(towards.Radians), 12), Math.Round(Math.Cos(towards.Radians), 12));
        var length = sections[^1].At.Metres;
        var at = Enumerable.Range(0, SweepPanels + 1).Select(i => length * i / SweepPanels).Concat(sections.Select(one => one.At.Metres)).Order().ToList();
        return [.. at.Where((z, i) => i == 0 || z - at[i - 1] > 1e-6).Select(z => At(sections, z) is var one && 4.0 * sweepMm * (z / length) * (1.0 - (z / length)) is var bow
            ? one with { OffsetXMm = one.OffsetXMm + (bow * sin), OffsetYMm = one.OffsetYMm + (bow * cos) }
            : default)];
    }

    /// <summary>The section between its neighbours, axes and centre on straight lines.</summary>
    internal static LogSection At(IReadOnlyList<LogSection> sections, double metres)
    {
        var next = 1;
        while (next < sections.Count - 1 && sections[next].At.Metres < metres)
            next++;

        var (a, b) = (sections[next - 1], sections[next]);
        var share = Math.Clamp((metres - a.At.Metres) / (b.At.Metres - a.At.Metres), 0.0, 1.0);
        return new(
            Length.FromMetres(metres), Mix(a.DiameterX, b.DiameterX, share), Mix(a.DiameterY, b.DiameterY, share),
            a.OffsetXMm + (share * (b.OffsetXMm - a.OffsetXMm)), a.OffsetYMm + (share * (b.OffsetYMm - a.OffsetYMm)))
        {
            RadiiMm = a.RadiiMm is { } from && b.RadiiMm is { } to ? [.. from.Zip(to, (one, other) => one + (share * (other - one)))] : null,
        };
    }

    private static Length Mix(Length a, Length b, double share) => Length.FromMetres(a.Metres + (share * (b.Metres - a.Metres)));

    // Areas are quadratic along the log between two sections, so Simpson's rule is exact.
    private static double Between(LogSection a, LogSection b)
    {
        if (a.RadiiMm is { } from && b.RadiiMm is { } to)
        {
            var middle = SectionRim.Of([.. from.Zip(to, (one, other) => (one + other) / 2.0)]).Area;
            return (b.At.Metres - a.At.Metres) / 6.0 * 1e-6 * (SectionRim.Of(from).Area + (4.0 * middle) + SectionRim.Of(to).Area);
        }

        var (ax, ay, bx, by) = (a.DiameterX.Metres, a.DiameterY.Metres, b.DiameterX.Metres, b.DiameterY.Metres);
        return Math.PI / 24.0 * (b.At.Metres - a.At.Metres) * ((2.0 * ax * ay) + (ax * by) + (bx * ay) + (2.0 * bx * by));
    }

    private static string Inches(Length length) => length.Inches.ToString("0.##", CultureInfo.InvariantCulture) + " in";

    private static string Feet(Length length) => length.Feet.ToString("0.##", CultureInfo.InvariantCulture) + " ft";
}
