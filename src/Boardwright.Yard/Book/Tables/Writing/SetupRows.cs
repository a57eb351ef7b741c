using System.Globalization;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.Tables.Writing;

/// <summary>Rows of the yard itself, its surroundings and its figures: the other way of <see cref="SetupTables"/>.</summary>
internal static class SetupRows
{
    public static (string Table, IEnumerable<RowWriter> Rows)? Of(Entry e) => e.Fact switch
    {
        YardDescribed f => ("yard", [new RowWriter(e).Text("name", f.Name).Text("place", f.Place).Number("altitude_m", f.AltitudeM).Number("latitude_deg", f.LatitudeDeg)
            .Mm("throat", f.ThroatMm).M("log_len_max", f.LogLengthMaxM).Mm("kerf", f.KerfMm).Mm("planer_width", f.PlanerWidthMm)]),
        PlaceNamed f => ("places", [new RowWriter(e).Text("place", f.Place).Word<PlaceKind>("type", f.Type).Yes("signal", f.Signal)]),
        PersonNamed f => ("people", [new RowWriter(e).Text("person", f.Person).Text("role", f.Role).Money("paid_per_hour_money", f.PaidPerHourMoney).Yes("loads_kilns", f.LoadsKilns).Yes("leads_loading", f.LeadsLoading)]),
        WorkDaySet f => ("work-days", [new RowWriter(e).Word<DayOfWeek>("day", f.Day).Time("from", f.From).Time("to", f.To).Number("hours", f.Hours).List("people", f.People)]),
        DayClosed f => ("closed-days", [new RowWriter(e).Date("day", f.Day).Time("from", f.From).Text("why", f.Why)]),
        PersonAway f => ("people-away", [new RowWriter(e).Text("person", f.Person).Date("day", f.Day).Text("why", f.Why)]),
        SettingSet f => ("settings", [new RowWriter(e).Text("name", f.Name).Number("value", f.Value).Text("unit", f.Unit)]),
        SpeciesPriced f => ("prices", [new RowWriter(e).Text("species", f.Species).Money("dry_fas_money", f.DryFasMoney).Money("dry_1c_money", f.Dry1cMoney).Money("dry_2a_money", f.Dry2aMoney)
            .Money("green_fas_money", f.GreenFasMoney).Money("green_1c_money", f.Green1cMoney).Money("green_2a_money", f.Green2aMoney)
            .Text("falldown_boards_pct", Band(f.FalldownBoardsPct)).Text("falldown_slabs_pct", Band(f.FalldownSlabsPct))]),
        DamageDaysSet f => ("damage-days", [new RowWriter(e).Text("stain_group", f.StainGroup).Text("below_4c_days", Days(f.Below4C)).Text("from_4_to_15c_days", Days(f.From4To15C)).Text("above_15c_days", Days(f.Above15C))]),
        ClimateNormalSet f => ("normals", [new RowWriter(e).Number("month", f.Month).Number("mean_c", f.MeanC).Number("mean_rh_pct", f.MeanRhPct)]),
        WeatherObserved f => ("weather", [Weather(e, f.Date, f.MeanC, f.MeanRhPct, f.WindMeanMS, f.MinC, f.MaxC)]),
        WeatherForecast f => ("forecast", [Weather(e, f.Date, f.MeanC, f.MeanRhPct, f.WindMeanMS, f.MinC, f.MaxC)]),
        KilnInstalled f => ("kilns", [new RowWriter(e).Text("kiln", f.Kiln).Word<KilnType>("type", f.Type).Number("capacity_44_bf", f.CapacityBf).M("max_piece", f.PieceLengthMaxM).C("max_dry_bulb", f.DryBulbMaxC)
            .Number("heat_kw", f.HeatKw).C("heat_at_water", f.HeatAtWaterC).Number("stack_places", f.StackPlaces).Mm("place_width", f.PlaceWidthMm).M("place_length", f.PlaceLengthM).Mm("place_height", f.PlaceHeightMm)
            .Number("fill_of_layers", f.FillOfLayers).Number("load_h", f.LoadHours).Number("unload_h", f.UnloadHours).Number("fans_kw", f.FansKw).Money("fixed_per_day_money", f.FixedPerDayMoney)
            .List("holding_heat_kw", f.HoldingHeat.Select(h => string.Create(CultureInfo.InvariantCulture, $"{h.OutsideC:R}:{h.HeatKw:R}"))).Text("note", f.Note).Number("load_max_kg", f.LoadMaxKg)]),
        BoilerInstalled f => ("boilers", [new RowWriter(e).Text("boiler", f.Boiler).Number("steady_output_kw", f.SteadyOutputKw).Number("stoked_every_h", f.StokedEveryHours)]),
        SensorPlaced f => ("sensors", [new RowWriter(e).Text("topic", f.Topic).Text("kiln", f.Kiln).Word<SensorQuantity>("quantity", f.Quantity).Text("unit", f.Unit).Number("silent_after_min", f.SilentAfterMinutes)]),
        FuelCounted f => ("fuel", [new RowWriter(e).At("counted_on").Number("cords", f.Cords).Number("solid_share", f.SolidShare).Text("species", f.Species).Number("mc_pct", f.McPct)]),
        PhoneCallTaken f => ("calls", [Call(e, f)]),
        _ => null,
    };

    private static RowWriter Weather(Entry e, DateOnly date, double mean, double rh, double? wind, double? min, double? max) =>
        new RowWriter(e).Date("date", date).Number("t_mean_c", mean).Number("rh_mean_pct", rh).Number("wind_mean_m_s", wind).Number("t_min_c", min).Number("t_max_c", max);

    private static RowWriter Call(Entry e, PhoneCallTaken f) => new RowWriter(e).At("at").Text("caller", f.Caller).Text("text", f.Text).Text("about", f.About)
        .Text("species", f.Tree?.Species).Mm("girth", f.Tree?.GirthMm).M("first_limb", f.Tree?.FirstLimbM).Number("road_miles", f.Tree?.RoadMiles).M("log_len", f.Tree?.LogLengthM)
        .Mm("small_end_low", f.Tree?.SmallEndLowMm).Mm("small_end_high", f.Tree?.SmallEndHighMm).Yes("metal_nearby", f.Tree?.MetalNearby == true).Text("felled_by", f.Tree?.FelledBy);

    private static string? Band(Band? band) => band is null ? null : string.Create(CultureInfo.InvariantCulture, $"{band.Low:R}/{band.Likely:R}/{band.High:R}");

    private static string Days(DamageDays days) => string.Join(" / ", new[] { days.StainDays, days.BorerDays, days.EndCheckDays }.Select(day => day?.ToString(CultureInfo.InvariantCulture) ?? "-"));
}
