namespace Boardwright.Sawing;

/// <summary>Solid volume of a log from its diameters.</summary>
/// <remarks>
/// <para>Equations: Smalian (A1 + A2) L/2; Huber Am L; Newton (A1 + 4 Am + A2) L/6. All exact for a paraboloid; Newton exact for a cone too.</para>
/// <para>Accuracy, 39 sweetgum stems, logs of 12 ft: from the stump Smalian reads 20.7 % high on average (5 to 45), Huber 7.8 % low, Newton 1.7 % high;
/// from 12 ft up all three are within 0.5 %. Measure a flared butt above the flare.</para>
/// <para>Shape: kernels; diameters and length in one unit of length, volume in its cube.</para>
/// </remarks>
/// <source id="lenhart-sweetgum" locator="diameters inside bark every 3 ft"/>
/// <method page="docs/methods/log-volume-and-weight.md"/>
public static class CubicVolume
{
    /// <summary>From both ends.</summary>
    public static double Smalian(double smallEnd, double largeEnd, double length) => (Area(smallEnd) + Area(largeEnd)) * length / 2.0;

    /// <summary>From the middle.</summary>
    public static double Huber(double middle, double length) => Area(middle) * length;

    /// <summary>From both ends and the middle.</summary>
    public static double Newton(double smallEnd, double middle, double largeEnd, double length) =>
        (Area(smallEnd) + 4.0 * Area(middle) + Area(largeEnd)) * length / 6.0;

    private static double Area(double diameter) => Math.PI / 4.0 * diameter * diameter;
}
