using System.Text.Json.Serialization;

namespace Boardwright.Yard.Book.Facts;

/// <summary>One thing that happened or was measured in the yard. The set is closed: every kind stands in this list and in <see cref="Fold"/>.</summary>
/// <remarks>
/// Facts are what is kept for ever, so their members are plain values whose names end in their unit; the figures as a person typed them
/// are kept beside the fact in <see cref="Entry.AsEntered"/>. Tallies keep inches and whole feet because the rule counts in them.
/// </remarks>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(Withdrawn), "withdrawn")]
[JsonDerivedType(typeof(ValueBeside), "value_beside")]
[JsonDerivedType(typeof(NumbersSetAside), "numbers_set_aside")]
[JsonDerivedType(typeof(DayTurned), "day_turned")]
[JsonDerivedType(typeof(NoteWritten), "note_written")]
[JsonDerivedType(typeof(PhoneCallTaken), "phone_call_taken")]
[JsonDerivedType(typeof(YardDescribed), "yard_described")]
[JsonDerivedType(typeof(PlaceNamed), "place_named")]
[JsonDerivedType(typeof(PersonNamed), "person_named")]
[JsonDerivedType(typeof(SettingSet), "setting_set")]
[JsonDerivedType(typeof(SpeciesPriced), "species_priced")]
[JsonDerivedType(typeof(DamageDaysSet), "damage_days_set")]
[JsonDerivedType(typeof(KilnInstalled), "kiln_installed")]
[JsonDerivedType(typeof(BoilerInstalled), "boiler_installed")]
[JsonDerivedType(typeof(EquipmentDown), "equipment_down")]
[JsonDerivedType(typeof(EquipmentPromised), "equipment_promised")]
[JsonDerivedType(typeof(EquipmentBack), "equipment_back")]
[JsonDerivedType(typeof(FuelCounted), "fuel_counted")]
[JsonDerivedType(typeof(BoilerStoked), "boiler_stoked")]
[JsonDerivedType(typeof(SensorPlaced), "sensor_placed")]
[JsonDerivedType(typeof(SensorJudged), "sensor_judged")]
[JsonDerivedType(typeof(ClimateNormalSet), "climate_normal_set")]
[JsonDerivedType(typeof(WeatherObserved), "weather_observed")]
[JsonDerivedType(typeof(WeatherForecast), "weather_forecast")]
[JsonDerivedType(typeof(WorkDaySet), "work_day_set")]
[JsonDerivedType(typeof(DayClosed), "day_closed")]
[JsonDerivedType(typeof(PersonAway), "person_away")]
[JsonDerivedType(typeof(LogReceived), "log_received")]
[JsonDerivedType(typeof(LogSeen), "log_seen")]
[JsonDerivedType(typeof(LogRadiiMeasured), "log_radii_measured")]
[JsonDerivedType(typeof(MetalScanned), "metal_scanned")]
[JsonDerivedType(typeof(BladeStruck), "blade_struck")]
[JsonDerivedType(typeof(EndCoated), "end_coated")]
[JsonDerivedType(typeof(LogSawn), "log_sawn")]
[JsonDerivedType(typeof(YieldReset), "yield_reset")]
[JsonDerivedType(typeof(ThicknessMeasured), "thickness_measured")]
[JsonDerivedType(typeof(TagLost), "tag_lost")]
[JsonDerivedType(typeof(TagProven), "tag_proven")]
[JsonDerivedType(typeof(SpeciesCorrected), "species_corrected")]
[JsonDerivedType(typeof(StackBuilt), "stack_built")]
[JsonDerivedType(typeof(StackMoved), "stack_moved")]
[JsonDerivedType(typeof(StackTakenFrom), "stack_taken_from")]
[JsonDerivedType(typeof(StackCounted), "stack_counted")]
[JsonDerivedType(typeof(StackReserved), "stack_reserved")]
[JsonDerivedType(typeof(StackDressed), "stack_dressed")]
[JsonDerivedType(typeof(CustomPlaned), "custom_planed")]
[JsonDerivedType(typeof(ShavingsEmptied), "shavings_emptied")]
[JsonDerivedType(typeof(MoistureRead), "moisture_read")]
[JsonDerivedType(typeof(SectionsWeighed), "sections_weighed")]
[JsonDerivedType(typeof(ChargePlanned), "charge_planned")]
[JsonDerivedType(typeof(ScheduleWritten), "schedule_written")]
[JsonDerivedType(typeof(ChargeLoaded), "charge_loaded")]
[JsonDerivedType(typeof(ScheduleChosen), "schedule_chosen")]
[JsonDerivedType(typeof(SampleCut), "sample_cut")]
[JsonDerivedType(typeof(SampleWeighed), "sample_weighed")]
[JsonDerivedType(typeof(SampleDamaged), "sample_damaged")]
[JsonDerivedType(typeof(SettingsChanged), "settings_changed")]
[JsonDerivedType(typeof(GaugeRead), "gauge_read")]
[JsonDerivedType(typeof(Interrupted), "interrupted")]
[JsonDerivedType(typeof(RestartStepDone), "restart_step_done")]
[JsonDerivedType(typeof(StressTested), "stress_tested")]
[JsonDerivedType(typeof(HeatTreated), "heat_treated")]
[JsonDerivedType(typeof(ChargeUnloaded), "charge_unloaded")]
[JsonDerivedType(typeof(PackTallied), "pack_tallied")]
[JsonDerivedType(typeof(TallyChosen), "tally_chosen")]
[JsonDerivedType(typeof(PackRestacked), "pack_restacked")]
[JsonDerivedType(typeof(PackLabelled), "pack_labelled")]
[JsonDerivedType(typeof(OrderTaken), "order_taken")]
[JsonDerivedType(typeof(OrderAnswered), "order_answered")]
[JsonDerivedType(typeof(OrderChangeAsked), "order_change_asked")]
[JsonDerivedType(typeof(OrderChangeSettled), "order_change_settled")]
[JsonDerivedType(typeof(OrderWithdrawn), "order_withdrawn")]
[JsonDerivedType(typeof(CustomersJoined), "customers_joined")]
[JsonDerivedType(typeof(Shipped), "shipped")]
[JsonDerivedType(typeof(Complained), "complained")]
[JsonDerivedType(typeof(ClassPlanned), "class_planned")]
[JsonDerivedType(typeof(ResinListed), "resin_listed")]
[JsonDerivedType(typeof(ResinCounted), "resin_counted")]
[JsonDerivedType(typeof(PourPlanned), "pour_planned")]
[JsonDerivedType(typeof(PourMoved), "pour_moved")]
[JsonDerivedType(typeof(PourRiskSigned), "pour_risk_signed")]
[JsonDerivedType(typeof(ResinMixed), "resin_mixed")]
[JsonDerivedType(typeof(Poured), "poured")]
[JsonDerivedType(typeof(ShopTemperatureRead), "shop_temperature_read")]
[JsonDerivedType(typeof(Demoulded), "demoulded")]
public abstract record Fact
{
    private protected Fact()
    {
    }
}

/// <summary>How the yard is set up. It holds whenever it was written down: a log of last year lies in a place named today.</summary>
public abstract record SetupFact : Fact
{
    private protected SetupFact()
    {
    }
}
