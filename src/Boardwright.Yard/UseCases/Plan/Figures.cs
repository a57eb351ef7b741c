using Boardwright.Drying.Schedules;
using Boardwright.Drying.Vacuum;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;

namespace Boardwright.Yard.UseCases;

/// <summary>The editable figures a plan needs, from the settings, or common practice where nobody set one.</summary>
internal sealed record PlanFigures
{
    /// <summary>Moisture wood is dried to where no order says otherwise.</summary>
    public required MoistureContent HouseTarget { get; init; }

    /// <summary>Equalizing and conditioning after drying, for each inch of thickness.</summary>
    public required Elapsed FinishPerInch { get; init; }

    /// <summary>Money a day late counts for each point of importance.</summary>
    public required decimal ImportanceMoneyPerDay { get; init; }

    /// <summary>Money another plan must save in risk and cost to take the place of the one before it; less lateness always does.</summary>
    public required decimal ChangeWorthMoney { get; init; }

    /// <summary>What it costs to deliver other wood than the order names.</summary>
    public required decimal OtherWoodMoney { get; init; }

    /// <summary>Degrees the shop can be turned down when kilns need the heat.</summary>
    public required double ShopGivesWayKelvins { get; init; }

    /// <summary>What each kilowatt-hour taken from the shop counts.</summary>
    public required decimal ShopMoneyPerKwh { get; init; }

    public required bool CustomersShareCharges { get; init; }

    public required Pressure VacuumPressure { get; init; }

    public required RadioFrequency Generator { get; init; }

    public required double OakKilowattsPerCubicMetre { get; init; }

    public required double OtherKilowattsPerCubicMetre { get; init; }

    public required double ThicknessRatioMost { get; init; }

    public required double MoistureGapMostPercent { get; init; }

    /// <summary>Electric heaters that can help a kiln through a cold day, kW; 0 where the house has none.</summary>
    public required double ElectricHeatersKw { get; init; }

    public required double ElectricityMoneyPerKwh { get; init; }

    public required double InterestPercentPerYear { get; init; }

    public required IReadOnlySet<DayOfWeek> PlanerDays { get; init; }

    /// <summary>Which samples lead a charge through its schedule.</summary>
    public required StepRule StepsBy { get; init; }

    /// <summary>Most radio-frequency power in a cubic metre of a wood, kW.</summary>
    public double MostKilowattsPerCubicMetre(Species species) => species.CommonName.EndsWith("oak", StringComparison.Ordinal) ? OakKilowattsPerCubicMetre : OtherKilowattsPerCubicMetre;

    public static PlanFigures Of(YardState state) => new()
    {
        HouseTarget = MoistureContent.FromPercent(state.Setting("house_target") ?? 7.0),
        FinishPerInch = Elapsed.FromHours(state.Setting("equalize_and_condition") ?? 24.0),
        ImportanceMoneyPerDay = (decimal)(state.Setting("importance_per_day_late") ?? 10.0),
        ChangeWorthMoney = (decimal)(state.Setting("plan_change_worth") ?? 50.0),
        OtherWoodMoney = (decimal)(state.Setting("other_wood_than_named") ?? 25.0),
        ShopGivesWayKelvins = state.Setting("shop_gives_way") ?? 2.0,
        ShopMoneyPerKwh = (decimal)(state.Setting("shop_gives_way_money") ?? 1.0),
        CustomersShareCharges = (state.Setting("customers_share_charges") ?? 1.0) > 0.0,
        VacuumPressure = Pressure.FromPascals(100.0 * (state.Setting("rf_kiln_pressure") ?? 75.0)),
        Generator = new(Share.FromPercent(state.Setting("rf_line_to_platen") ?? 55.0), Share.FromPercent(state.Setting("rf_platen_to_wood") ?? 90.0)),
        OakKilowattsPerCubicMetre = state.Setting("rf_kiln_power_oak") ?? 3.0,
        OtherKilowattsPerCubicMetre = state.Setting("rf_kiln_power") ?? 5.0,
        ThicknessRatioMost = state.Setting("share_charge_thickness_ratio") ?? 1.5,
        MoistureGapMostPercent = state.Setting("share_charge_moisture_gap") ?? 12.0,
        ElectricHeatersKw = state.Setting("electric_heaters") ?? 0.0,
        ElectricityMoneyPerKwh = state.Setting("electricity") ?? 0.16,
        InterestPercentPerYear = state.Setting("interest") ?? 8.0,
        StepsBy = HouseRules.Steps(state),
        PlanerDays = Enum.GetValues<DayOfWeek>().Where(day => Planes(state, day)).ToHashSet(),
    };

    // Tuesday and Thursday unless the settings name days (planer_monday and so on, 1 for yes).
    private static bool Planes(YardState state, DayOfWeek day) =>
        (state.Setting("planer_" + Lower(day)) ?? (day is DayOfWeek.Tuesday or DayOfWeek.Thursday ? 1.0 : 0.0)) > 0.0;

    private static string Lower(DayOfWeek day) => day switch
    {
        DayOfWeek.Monday => "monday",
        DayOfWeek.Tuesday => "tuesday",
        DayOfWeek.Wednesday => "wednesday",
        DayOfWeek.Thursday => "thursday",
        DayOfWeek.Friday => "friday",
        DayOfWeek.Saturday => "saturday",
        _ => "sunday",
    };
}
