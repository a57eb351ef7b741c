namespace Boardwright.Planning;

/// <summary>The rules a plan can break.</summary>
public enum PlanFaultKind
{
    /// <summary>Names a kiln, stack, order, started charge or warm-up that the input does not have.</summary>
    Unknown,

    /// <summary>A charge without stacks.</summary>
    EmptyCharge,

    /// <summary>A stack in two charges, or a started charge twice.</summary>
    Twice,

    /// <summary>A started charge left out, or given other stacks or another kiln.</summary>
    StartedChanged,

    /// <summary>A stack that must stay out of every kiln.</summary>
    NeverKiln,

    /// <summary>A stack in a kind of kiln for which it has no drying time.</summary>
    WrongKind,

    /// <summary>A piece longer than the kiln.</summary>
    TooLong,

    /// <summary>Wood that must be heated to more than the kiln gives.</summary>
    TooCool,

    /// <summary>More wood than the kiln holds.</summary>
    TooFull,

    /// <summary>More weight than the kiln carries.</summary>
    TooHeavy,

    /// <summary>A matched set torn apart.</summary>
    SetTorn,

    /// <summary>Stacks that may not share a charge.</summary>
    Sharing,

    /// <summary>Loading or unloading when no crew is there.</summary>
    NoCrew,

    /// <summary>The crew at more kilns than it can work at once.</summary>
    CrewClash,

    /// <summary>Two charges in one kiln.</summary>
    KilnClash,

    /// <summary>A charge in a kiln that is out of use.</summary>
    KilnOut,

    /// <summary>Loaded before the stack can be had.</summary>
    TooEarly,

    /// <summary>Unloaded before it is dry.</summary>
    NotDry,

    /// <summary>The kiln's coil cannot carry it.</summary>
    CoilTooSmall,

    /// <summary>The kilns draw more heat than there is.</summary>
    HeatShort,

    /// <summary>More of a stack kept for orders than it yields.</summary>
    Oversold,

    /// <summary>An order drawn from wood it may not have, or not in the state it asks.</summary>
    WrongWood,

    /// <summary>A promise, heat figure or score that does not follow from the plan.</summary>
    WrongClaim,
}
