using Boardwright.Documents.Kilns;
using Boardwright.Quantities;

namespace Boardwright.Documents.Tests;

/// <summary>Charges C-61 and V-19 of the demonstration yard; all invented.</summary>
internal static class KilnExamples
{
    private static readonly (double DryGrams, double[] Grams)[] Samples =
    [
        (2753.2, [3412, 3337, 3260, 3210, 3150]), (2882.7, [3655, 3574, 3491, 3430, 3358]), (2607.8, [3188, 3111, 3038, 2989, 2931]),
        (2808.2, [3540, 3465, 3383, 3328, 3221]), (2554.7, [3097, 3020, 2951, 2902, 2851]), (2951.3, [3710, 3633, 3547, 3488, 3418]),
    ];

    public static KilnRunSheetContent Oak { get; } = new()
    {
        Yard = Examples.Yard,
        Kiln = "K1",
        Charge = "C-61",
        Load = "Northern red oak 4/4, 3,150 bf, stack S-10",
        Target = MoistureContent.FromPercent(7),
        Started = new DateOnly(2026, 10, 21),
        At = new DateTime(2026, 11, 2, 6, 0, 0),
        Now = Air(140, 108),
        NowSince = "since 29 Oct",
        Next = Air(150, 112),
        NextWhen = "after this weighing",
        WeighingDays = [new(2026, 10, 21), new(2026, 10, 24), new(2026, 10, 27), new(2026, 10, 29), new(2026, 10, 31)],
        Samples = [.. Samples.Select((s, i) => Sample(i + 1, s.DryGrams, s.Grams))],
        SafeDailyLoss = Share.FromPercent(3.8),
        SafeDailyLossBasis = "red oak 4/4, green; no longer the limit below 20 %",
        LastDailyLoss = Share.FromPercent(1.2),
        ScheduleCode = "T4-D2",
        ScheduleSource = "Dry Kiln Operator's Manual (1991), temperature and depression tables of chapter 7",
        // Dry Kiln Operator's Manual, assembled T4-D2 (mark M).
        Steps =
        [
            Step(50, 110, 106, 87, 17.6),
            Step(40, 110, 105, 84, 16.3),
            Step(35, 110, 102, 76, 13.4),
            Step(30, 110, 96, 60, 10.0),
            Step(25, 120, 90, 31, 5.6),
            Step(20, 130, 80, 10, 2.0),
            Step(15, 140, 90, 15, 2.7),
            Step(0, 180, 130, 26, 3.6),
        ],
        StepNow = 7,
        StepSet = 7,
        Warnings = ["Sample 4 lost a corner on 31 Oct: 3,263 g before, 3,221 g after. Its dry weight is now 2,808.2 g, not 2,844.8 g.", "Power was off 30 Oct, 02:10 to 07:40. Dry bulb fell from 140 to 97 °F, doors shut."],
        EqualizeEmc = MoistureContent.FromPercent(5),
        ConditionEmc = MoistureContent.FromPercent(11),
    };

    public static KilnRunSheetContent Slabs { get; } = new()
    {
        Yard = Examples.Yard,
        Kiln = "K3",
        Charge = "V-19",
        Load = "Black cherry and hackberry 10/4 slabs, 575 bf, stacks S-08 and S-09",
        Target = MoistureContent.FromPercent(8),
        Started = new DateOnly(2026, 10, 31),
        At = new DateTime(2026, 11, 2, 6, 0, 0),
        Now = new KilnSetting.Vacuum(Temperature.FromFahrenheit(140), Pressure.FromPascals(7500)),
        NowSince = "since 31 Oct",
    };

    public static KilnRunSheetContent Long { get; } = Oak with
    {
        Yard = Examples.LongName,
        Kiln = Examples.LongName,
        Charge = Examples.LongName,
        Load = Examples.LongName,
        NowSince = Examples.LongName,
        NextWhen = Examples.LongName,
        SafeDailyLossBasis = Examples.LongName,
        ScheduleSource = Examples.LongName,
        Warnings = [Examples.LongName, Examples.LongName],
        Samples = [.. Enumerable.Range(1, 14).Select(n => Oak.Samples[0] with { Number = $"{n}", Remark = n == 3 ? "heartwood, flatsawn" : "" })],
    };

    private static KilnSetting.Air Air(double dryBulbF, double wetBulbF) => new(Temperature.FromFahrenheit(dryBulbF), Temperature.FromFahrenheit(wetBulbF));

    private static KilnSample Sample(int number, double dryGrams, double[] grams) => new(
        number.ToString(System.Globalization.CultureInfo.InvariantCulture),
        Mass.FromGrams(dryGrams),
        [.. grams.Select((g, i) => number == 3 && i == 1 ? null : new SampleWeighing(Mass.FromGrams(g), MoistureContent.FromPercent(100.0 * ((g / dryGrams) - 1.0))))],
        number switch { 2 => "wettest", 5 => "driest", _ => "" });

    private static ScheduleStep Step(double above, double dryBulbF, double wetBulbF, double humidity, double emc) => new(
        MoistureContent.FromPercent(above), Temperature.FromFahrenheit(dryBulbF), Temperature.FromFahrenheit(wetBulbF), MoistureContent.FromPercent(emc), RelativeHumidity.FromPercent(humidity));
}
