using Boardwright.Quantities;

namespace Boardwright.Drying.Schedules;

/// <summary>How the prongs of a stress section stand, the shell's side of it.</summary>
public enum ProngTurn
{
    /// <summary>Straight: no stress is locked in.</summary>
    Straight,

    /// <summary>A little in.</summary>
    SlightlyIn,

    /// <summary>In, towards each other: casehardened.</summary>
    In,

    /// <summary>Out, apart: reverse casehardened.</summary>
    Out,
}

/// <summary>What a stress test says of a charge.</summary>
public enum StressVerdict
{
    /// <summary>Read at once: uneven moisture bends prongs as stress does.</summary>
    ReadAgain,

    /// <summary>Free of stress.</summary>
    Done,

    /// <summary>Enough where the planer takes the shell off both faces alike.</summary>
    EnoughToPlane,

    /// <summary>Condition longer.</summary>
    ConditionLonger,

    /// <summary>Conditioned too long: hard to cure.</summary>
    OverConditioned,
}

/// <summary>The prong test: a section one inch along the grain, clear of ends and knots, cut into a fork that shows the stress locked in a board.</summary>
/// <remarks>
/// <para>Under 6/4 two prongs, the middle third sawn out; from 6/4 six prongs, the second and the fifth broken out. Read at once and again after 24 h in the shop's air, or after 15 s in a
/// 1000 W microwave oven and a few minutes of cooling. In: condition longer; straight: done; out: conditioned too long (ah-188). A little in is enough where the planer takes the shell off (conners-for-128).</para>
/// <para>Equation: index = 100 (gap sawn - gap read)/prong length, in percent; straight within 1, a little in up to 3: house figures, common practice.</para>
/// </remarks>
/// <source id="ah-188" locator="ch. 6, stress sections"/>
/// <source id="conners-for-128" locator="p. 56"/>
/// <method page="docs/methods/stress-test.md"/>
public static class StressTest
{
    private const double StraightIndex = 1.0;
    private const double SlightIndex = 3.0;
    private const double SixProngsFromInches = 1.5;

    /// <summary>Prongs to cut for a rough thickness: two, or six with the second and the fifth broken out.</summary>
    public static int ProngsFor(Length thickness) => thickness.Inches < SixProngsFromInches - 1e-6 ? 2 : 6;

    /// <summary>Percent of the prongs' length by which their tips came together; below zero where they went apart.</summary>
    public static double Index(Length prong, Length gapSawn, Length gapRead) => 100.0 * (gapSawn.Metres - gapRead.Metres) / prong.Metres;

    /// <summary>The word for an index.</summary>
    public static ProngTurn Turn(double index) => index > SlightIndex ? ProngTurn.In : index > StraightIndex ? ProngTurn.SlightlyIn : index >= -StraightIndex ? ProngTurn.Straight : ProngTurn.Out;

    /// <summary>What one section says.</summary>
    /// <param name="turn">How its prongs stand.</param>
    /// <param name="settled">True when the moisture in it had evened out before it was read.</param>
    public static StressVerdict Judge(ProngTurn turn, bool settled) => (turn, settled) switch
    {
        (_, false) => StressVerdict.ReadAgain,
        (ProngTurn.Straight, _) => StressVerdict.Done,
        (ProngTurn.SlightlyIn, _) => StressVerdict.EnoughToPlane,
        (ProngTurn.In, _) => StressVerdict.ConditionLonger,
        _ => StressVerdict.OverConditioned,
    };

    /// <summary>Hours of conditioning that are usual for a thickness: 16 to 24 at 4/4, 48 at 8/4, by straight line between and beyond, 4 to 72 at most.</summary>
    /// <source id="ah-188" locator="ch. 7, conditioning"/>
    /// <method page="docs/methods/equalize-and-condition.md"/>
    public static Elapsed UsualConditioning(Length thickness) => Elapsed.FromHours(Math.Clamp(20.0 + 28.0 * (thickness.Inches - 1.0), 4.0, 72.0));
}
