using Boardwright.Quantities;

namespace Boardwright.Sawing.Tests.Cutting;

/// <summary>Logs, rules and prices for the tests of cutting plans; all invented.</summary>
internal static class SomeLogs
{
    /// <summary>The usual rules on a coarse grid, to keep the tests quick.</summary>
    public static readonly SawingRules Rules = new() { GridStep = Length.FromInches(1.0 / 16.0), FaceStep = Length.FromInches(1.0), CantStep = Length.FromInches(2.0) };

    /// <summary>The patterns that saw boards.</summary>
    public static readonly IReadOnlyList<SawPattern> Patterns = [SawPattern.Live, SawPattern.Cant, SawPattern.Quarter];

    public static readonly IReadOnlyList<BoardPrice> Prices =
    [
        Price(4, "best", 6, 8, 4.0), Price(4, "common", 3, 4, 2.5), Price(8, "best", 6, 8, 5.2), Price(8, "common", 4, 4, 3.0),
    ];

    public static readonly IReadOnlyList<BoardPrice> GrainPrices = [.. Prices, Price(4, "quartered", 4, 4, 6.0) with { Grain = BoardGrain.Quartered }];

    public static BoardPrice Price(int quarters, string grade, double widthIn, double lengthFt, double money) =>
        new(NominalThickness.FromQuarters(quarters), grade, Length.FromInches(widthIn), Length.FromFeet(lengthFt), money);

    public static GreenSetting Setting(int quarters, double greenIn) => new(NominalThickness.FromQuarters(quarters), Length.FromInches(greenIn));

    public static LogShape Straight(double smallIn, double largeIn, double lengthFt, double sweepIn = 0.0, double rotIn = 0.0) => Expect.Done(LogShape.Straight(
        Length.FromInches(smallIn), Length.FromInches(largeIn), Length.FromFeet(lengthFt), Length.FromInches(sweepIn), Length.FromInches(rotIn)));

    /// <summary>A leaning oval that flares.</summary>
    public static LogShape Oval { get; } = Expect.Done(LogShape.Measured(
    [
        Section(0, 14, 12, 0, 0), Section(3, 15, 12.5, 10, -6), Section(6, 15.5, 14, 4, -12), Section(8.4, 18, 16, -8, 3),
    ]));

    public static LogSection Section(double atFt, double xIn, double yIn, double offsetXMm, double offsetYMm) =>
        new(Length.FromFeet(atFt), Length.FromInches(xIn), Length.FromInches(yIn), offsetXMm, offsetYMm);

    public static CuttingPlan Plan(LogShape log, SawPattern pattern, SawingRules? rules = null, IReadOnlyList<BoardPrice>? prices = null) =>
        Expect.Done(CuttingPlanner.Plan(log, rules ?? Rules, prices ?? Prices, pattern));
}
