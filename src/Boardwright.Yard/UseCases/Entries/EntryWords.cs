using System.Globalization;
using System.Text.Json.Nodes;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Wire;

namespace Boardwright.Yard.UseCases;

/// <summary>An entry of the book in one sentence, and where it belongs.</summary>
public static class EntryWords
{
    private const int ValuesMax = 5;
    private static readonly string[] Items = ["log", "stack", "pack", "charge", "order", "pour", "item", "equipment", "about"];

    /// <summary>What happened, in words.</summary>
    public static string Of(Fact fact) => fact switch
    {
        DayTurned f => string.Create(CultureInfo.InvariantCulture, $"The day turned to {f.Day:dddd d MMMM yyyy}."),
        NoteWritten f => f.Text,
        PhoneCallTaken f => $"{f.Caller} rang: {f.Text}",
        EquipmentDown f => $"{f.Equipment} is down: {f.Why}{(f.BackExpectedOn is { } day ? $"; back {Day(day)}" : "")}{(f.BackLateOn is { } late ? $", at the worst {Day(late)}" : "")}.",
        EquipmentPromised f => $"{f.Equipment} is promised for {Day(f.BackExpectedOn)} now{(f.Why is { } why ? $": {why}" : "")}.",
        EquipmentBack f => $"{f.Equipment} works again.",
        SensorPlaced f => $"A sensor of {f.Kiln} speaks as {f.Topic}: {SensorList.Words(f.Quantity)} in {f.Unit}.",
        SensorJudged f => f.Standing == SensorStanding.Alive ? $"The sensor {f.Topic} is alive again." : $"The sensor {f.Topic} is not to be believed: {f.Why}.",
        LogReceived f => $"{f.Log}, {f.Species}, came from {f.Source}: {Inches(f.SmallEndAMm)} by {Inches(f.SmallEndBMm)} in, {f.ScaleLengthM / 0.3048:0.#} ft.",
        LogSeen f => $"{f.Log} was looked at.{LogSeenWords.Of(f)}",
        LogRadiiMeasured f => $"{f.Log} was measured by {f.Places[0].RadiiMm.Count} radii at {f.Places.Count} places.",
        BladeStruck f => $"The blade hit metal in {f.Log}: {f.CostMoney:0.##}{(f.ChargedTo is { } who ? $", charged to {who}" : "")}.",
        EndCoated f => $"The ends of {f.Log} were coated.",
        LogSawn f => $"{f.Log} was sawn: {string.Join(", ", f.Into.Select(i => $"{i.Bf:0} bf to {i.Stack}"))}.",
        YieldReset f => $"What logs give over their scale is learned anew{(f.Species is { } wood ? $" for {wood}" : "")}{(f.Sawyer is { } sawyer ? $" in {sawyer}’s hands" : "")}: {f.Why}.",
        TagLost f => $"The tag of {f.Item} is gone{(f.ConfusedWith.Count > 0 ? $"; it may be {string.Join(" or ", f.ConfusedWith)}" : "")}: unproven species.",
        TagProven f => $"{f.Item} is known again: {f.How}.",
        SpeciesCorrected f => $"{f.Item} is {f.Species}: {f.How}.",
        StackBuilt f => $"{f.Stack}, {f.Species} {f.ThicknessQuarters}/4, was stacked in {f.Place}{(f.Bf is { } bf ? $": {bf:0} bf" : "")}.",
        SectionsWeighed f => $"{f.Sections.Count} oven sections of {f.Stack} were weighed.",
        StackMoved f => $"{f.Stack} lies in {f.Place} now.",
        StackTakenFrom f => $"{f.Bf:0} bf taken from {f.Stack}{(f.Why is { } why ? $": {why}" : "")}.",
        StackCounted f => $"{f.Stack} counted: {f.Bf:0} bf.",
        MoistureRead { WeightKg: { } kg } f => $"{f.Stack} on the scale: {kg:0} kg{(f.TareKg is > 0.0 and { } tare ? $", {tare:0} kg of it no wood" : "")}.",
        MoistureRead f => $"{f.Stack} read: {f.RawPct ?? f.MeanPct:0.0} %{(f.WoodC is { } c ? string.Create(CultureInfo.InvariantCulture, $" with the wood at {c * 1.8 + 32.0:0} °F") : "")}.",
        ChargePlanned f => $"{f.Charge} is planned for {f.Kiln}, {Day(f.InOn)} to {Day(f.OutOn)}: {string.Join(", ", f.Stacks)}{(f.Serves is { } serves ? $", for {serves}" : "")}.",
        ChargeLoaded f => $"{string.Join(", ", f.Stacks)} went into {f.Kiln} as charge {f.Charge}, to {f.TargetMcPct:0.#} %{(f.Schedule is { } own ? $", by {own}" : "")}.",
        ScheduleWritten f => $"Own schedule {f.Schedule}: {f.Rows.Count} rows{(f.Note is { } note ? $", {note}" : "")}.",
        ScheduleChosen f => $"{f.Charge} is dried by {f.Schedule ?? "the listed schedule of its woods"} from here on{(f.Note is { } why ? $": {why}" : "")}.",
        SampleWeighed f => $"Sample {f.Sample} of {f.Charge}: {f.WeightG:#,0} g.",
        SampleDamaged f => $"Sample {f.Sample} of {f.Charge} lost wood: {f.BeforeG:#,0} g before{(f.AfterG is { } after ? $", {after:#,0} g after" : ", not weighed after: retired")}.",
        SettingsChanged f => string.Create(CultureInfo.InvariantCulture, $"{f.Charge} set to {f.DryBulbC * 1.8 + 32.0:0} / {f.WetBulbC * 1.8 + 32.0:0} °F."),
        GaugeRead f => $"Gauges of {f.Charge}:{(f.DryBulbC is { } dry ? string.Create(CultureInfo.InvariantCulture, $" dry bulb {dry * 1.8 + 32.0:0} °F") : "")}{(f.WetBulbC is { } wet ? string.Create(CultureInfo.InvariantCulture, $", wet bulb {wet * 1.8 + 32.0:0} °F") : "")}{(f.PressurePa is { } pa ? $" {pa / 100.0:0} mbar" : "")}{(f.CondensateL is { } litres ? $" {litres:0.#} L of condensate" : "")}{(f.CoreC is { } core ? $", core {core:0} °C" : "")}{(f.DryBulbC - f.WetBulbC < 0.5 ? "; the wet bulb reads as the dry one: is its wick dry?" : "")}{(f.Note is { } note ? $"; {note}" : "")}.",
        Interrupted f => $"{f.Charge}: {f.Cause switch { InterruptionCause.PowerCut => "power cut", InterruptionCause.DoorOpen => "door open", InterruptionCause.HeatLost => "heat lost", InterruptionCause.LowWater => "low water in the boiler", InterruptionCause.Sensor => "sensor at fault", _ => "interrupted" }} from {f.From:d MMM HH:mm}{(f.To is { } to ? $" to {to:d MMM HH:mm}" : "")}.",
        RestartStepDone f => $"{f.Charge}, back after a stop: {RestartLine.DoneWords(f.Step)}.",
        StressTested f => $"Stress section of {f.Charge}{(f.Sample is { } of ? $", sample {of}" : "")}: prongs {ChargeStress.Words(f.Turn)}{(f.Settled ? "" : ", read at once")}.",
        HeatTreated f => $"{f.Charge}: core at {f.CoreC:0} °C for {f.HeldMinutes:0} min.",
        ChargeUnloaded f => $"Out of {f.Charge}: {string.Join(", ", f.Stacks.Select(s => $"{s.OutStack ?? s.Stack} {s.Bf:0} bf{(s.McMeanPct is { } mc ? $" at {mc:0.0} %" : "")}"))}.",
        PackTallied f => $"{f.Pack} {(f.Open ? "being tallied" : "tallied")}: {f.Boards.Count} boards, {f.Bf:0} bf{(f.StackEmpty ? $"; {f.Stack} is empty" : "")}.",
        PackRestacked f => $"The boards of {f.Pack} were put on stickers again as {f.Stack}, in {f.Place}{(f.Why is { } why ? $": {why}" : "")}.",
        TallyChosen f => $"Of the tallies of {f.Pack} the one of entry {f.Tally} holds: {f.Why}.",
        PackLabelled f => $"The tag of {f.Pack} was printed.",
        OrderTaken f => $"{f.Customer} ordered {string.Join("; ", f.Lines.Select(line => line.Goods).Distinct())} ({f.Order}).",
        OrderAnswered f => $"{f.Order} was answered {f.Answer.ToString().ToLowerInvariant()}{(f.PromisedOn is { } day ? $" for {Day(day)}" : "")}{(f.Why is { } why ? $": {why}" : "")}.",
        OrderChangeAsked f => $"{f.Order}: {(f.Quantity is { } quantity ? $"{quantity:0.#} asked for" : "")}{(f.DueOn is { } day ? $" by {Day(day)}" : "")}{(f.Why is { } why ? $", {why}" : "")}.",
        OrderChangeSettled f => $"The change of {f.Order} was {f.Outcome.ToString().ToLowerInvariant()}.",
        CustomPlaned f => $"{f.Bf:0} bf of {f.Species} planed for {f.Customer}.",
        ShavingsEmptied => "The shavings bin was emptied and swept.",
        Shipped f => $"{f.Shipment} left for {f.Order}: {string.Join(", ", [.. f.Packs, .. f.Stacks.Select(part => $"{part.Bf:0} bf of {part.Stack}")])}{(f.Packs.Count + f.Stacks.Count == 0 ? $"{f.Quantity:0.#}" : "")}{(f.Despite is { } despite ? $"; not as ordered, all the same: {despite}" : "")}.",
        Complained f => $"{f.Customer}: {f.Text}.",
        ResinCounted f => $"Part {f.Part} of {f.Resin}: {f.Kg:0.0} kg.",
        PourMoved f => $"{f.Pour} moved to {Day(f.PourOn)}: {f.Why}.",
        CustomersJoined f => $"{f.Customer} and {f.SameAs} are one customer{(f.How is { } how ? $": {how}" : "")}.",
        PourRiskSigned f => $"{f.SignedBy} wants {f.Pour} poured in spite of: {f.Warning}",
        ResinMixed f => $"Resin for {f.Pour}: {f.PartAKg:0.00} kg A, {f.PartBKg:0.00} kg B.",
        Poured f => $"{f.Pour} was poured.",
        ShopTemperatureRead f => $"Shop: {string.Join(", ", f.Readings.Select(reading => $"{reading.ShopC:0} °C"))}.",
        Demoulded f => $"{f.Pour} came out of its mould: {f.Seen}.",
        WeatherObserved f => $"Outside on {Day(f.Date)}: {f.MeanC:0.#} °C, {f.MeanRhPct:0} %.",
        Withdrawn => "Taken out.",
        NumbersSetAside f => $"{TagNumbers.Tag(f.Prefix, f.First)} to {TagNumbers.Tag(f.Prefix, f.First + f.Count - 1)} are set aside for {f.Phone}.",
        ValueBeside f => $"{char.ToUpperInvariant(EntryUnits.Label(f.Field)[0])}{EntryUnits.Label(f.Field)[1..]} {f.Value}, said beside what entry {f.Entry} says: neither knew of the other.",
        DayClosed f => $"No work on {f.Day:d MMM}{(f.From is { } from ? $" from {from:HH:mm}" : "")}: {f.Why}.",
        PersonAway f => $"{f.Person} is away on {f.Day:d MMM}: {f.Why}.",
        _ => Plain(fact),
    };

    /// <summary>The item an entry is most about, or null.</summary>
    public static string? About(Fact fact)
    {
        var node = Node(fact);
        return Items.Select(name => node[name]).FirstOrDefault(value => value is JsonValue)?.ToString();
    }

    internal static JsonObject Node(Fact fact) => JsonNode.Parse(BookJson.Line(fact))!.AsObject();

    // Kinds without a sentence of their own: the kind and its first plain values.
    private static string Plain(Fact fact)
    {
        var node = Node(fact);
        var values = node.Where(pair => pair.Key != "kind" && pair.Value is JsonValue).Take(ValuesMax).Select(pair => (UnitSuffix.Part(pair.Key), pair.Value)).Select(pair => $"{pair.Item1.Label} {pair.Value}{(pair.Item1.Unit.Length > 0 ? " " + pair.Item1.Unit : "")}");
        var kind = node["kind"]!.ToString().Replace('_', ' ');
        return $"{char.ToUpperInvariant(kind[0])}{kind[1..]}: {string.Join(", ", values)}.";
    }

    private static string Day(DateOnly day) => day.ToString("d MMM", CultureInfo.InvariantCulture);

    private static string Inches(double mm) => (mm / 25.4).ToString("0.#", CultureInfo.InvariantCulture);
}
