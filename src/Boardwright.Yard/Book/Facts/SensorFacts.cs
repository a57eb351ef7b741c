namespace Boardwright.Yard.Book.Facts;

/// <summary>What a sensor measures.</summary>
public enum SensorQuantity
{
    DryBulb,
    WetBulb,
    Core,
    Pressure,
    Condensate,
}

/// <summary>How far a sensor may be believed.</summary>
public enum SensorStanding
{
    /// <summary>Its values come and move.</summary>
    Alive,

    /// <summary>Nothing has been heard of it for too long.</summary>
    Silent,

    /// <summary>The same value to the last digit for hours.</summary>
    Still,

    /// <summary>A value that cannot be, or no number at all.</summary>
    Wild,
}

/// <summary>A sensor in a kiln, by the topic it speaks under, with the unit of bare numbers and the minutes of silence it is allowed.</summary>
public sealed record SensorPlaced(string Topic, string Kiln, SensorQuantity Quantity, string Unit, double SilentAfterMinutes = 15.0) : SetupFact;

/// <summary>A sensor began or ceased to be believed. Written when it changes, never again and again.</summary>
public sealed record SensorJudged(string Topic, SensorStanding Standing, string? Why = null) : Fact;
