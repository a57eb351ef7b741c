using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Sensors.Tests;

/// <summary>What the desk keeps, judges and writes.</summary>
public sealed class SensorDeskTests
{
    private readonly StandingClock clock = new(DemonstrationBook.FirstDay.ToDateTime(new(16, 30)));
    private readonly YardBook book;
    private readonly SensorDesk desk;

    public SensorDeskTests()
    {
        book = new(new MemoryBookStore(DemonstrationBook.Entries(DemonstrationBook.FirstDay)), clock);
        desk = new(book, clock);
        Place("kiln/K1/dry-bulb", SensorQuantity.DryBulb, "F");
        Place("kiln/K1/wet-bulb", SensorQuantity.WetBulb, "F");
        desk.Listening("127.0.0.1:1883", reached: true);
    }

    private string Charge => book.State.Kilns["K1"].Charge!;

    [Fact]
    public void A_running_charge_gets_a_reading_of_its_live_sensors_every_four_hours()
    {
        Say(150.2, 112.1);
        var before = book.State.Charges[Charge].Gauges.Count;
        Pass(TimeSpan.FromHours(5), every: TimeSpan.FromMinutes(5));

        var readings = book.State.Charges[Charge].Gauges.Skip(before).ToList();

        Assert.NotEmpty(readings);
        Assert.All(readings, reading => Assert.InRange(reading.DryBulb!.Value.Fahrenheit, 150.0, 151.0));
        Assert.All(readings.Zip(readings.Skip(1)), pair => Assert.True(pair.Second.At - pair.First.At >= SensorDesk.RoundAfter));
        Assert.Equal(SensorDesk.By, book.State.Entry(readings[0].Entry).By);
    }

    [Fact]
    public void A_silent_sensor_is_written_once_told_in_the_morning_and_left_out_of_the_reading()
    {
        Say(150.2, 112.1);
        desk.Round();
        clock.Local = clock.Local.AddMinutes(10);
        desk.Heard("kiln/K1/dry-bulb", "150.6");
        clock.Local = clock.Local.AddMinutes(10);

        var written = desk.Round();
        Assert.Empty(desk.Round());

        var judged = Assert.IsType<SensorJudged>(Assert.Single(written, entry => entry.Fact is SensorJudged).Fact);
        Assert.Equal(("kiln/K1/wet-bulb", SensorStanding.Silent), (judged.Topic, judged.Standing));
        Assert.Contains(MorningSheet.For(book.State, null).Tasks, task => task.Do == "See to the sensors of K1: wet bulb.");
        clock.Local = clock.Local.AddHours(5);
        desk.Heard("kiln/K1/dry-bulb", "150.9");
        Assert.DoesNotContain(desk.Round(), entry => entry.Fact is GaugeRead);   // one bulb alone says nothing of the air
        desk.Heard("kiln/K1/wet-bulb", "112");
        Assert.Contains(desk.Round(), entry => entry.Fact is SensorJudged { Standing: SensorStanding.Alive });
        Assert.DoesNotContain(MorningSheet.For(book.State, null).Tasks, task => task.Do.StartsWith("See to the sensors", StringComparison.Ordinal));
    }

    [Fact]
    public void While_the_broker_is_away_no_sensor_is_judged()
    {
        Say(150.2, 112.1);
        desk.Listening("127.0.0.1:1883", reached: false);
        clock.Local = clock.Local.AddHours(1);

        Assert.Empty(desk.Round());
        Assert.Equal(clock.Local.AddHours(-1), desk.List().LostSince);
    }

    [Fact]
    public void A_topic_that_is_nobodys_is_shown_until_it_is_placed()
    {
        desk.Heard("kiln/K2/dry-bulb", "41.5");
        Assert.Equal(("kiln/K2/dry-bulb", "41.5"), desk.List().Strangers.Select(stranger => (stranger.Topic, stranger.Payload)).Single());

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new SensorPlaced("kiln/K2/dry-bulb", "K2", SensorQuantity.DryBulb, "C")));
        desk.Heard("kiln/K2/dry-bulb", "41.5");

        Assert.Empty(desk.List().Strangers);
        Assert.Equal("41.5 °C", desk.List().Rows.Single(row => row.Sensor.Placed.Kiln == "K2").Shown);
    }

    [Theory]
    [InlineData("kiln/+/dry-bulb", "K1", "C", "without + or #")]
    [InlineData("", "K1", "C", "whole topic")]
    [InlineData("kiln/K9/dry-bulb", "K9", "C", "K1")]
    [InlineData("kiln/K1/other", "K1", "mbar", "C, F or K")]
    public void A_sensor_that_cannot_be_is_refused(string topic, string kiln, string unit, string accepted)
    {
        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(book.Write("Pell", new SensorPlaced(topic, kiln, SensorQuantity.DryBulb, unit)));
        Assert.Contains(accepted, refused.Reasons[0].ToString(), StringComparison.Ordinal);
    }

    private void Place(string topic, SensorQuantity quantity, string unit) =>
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write("Pell", new SensorPlaced(topic, "K1", quantity, unit)));

    private void Say(double dry, double wet)
    {
        desk.Heard("kiln/K1/dry-bulb", dry.ToString(CultureInfo.InvariantCulture));
        desk.Heard("kiln/K1/wet-bulb", wet.ToString(CultureInfo.InvariantCulture));
    }

    private void Pass(TimeSpan time, TimeSpan every)
    {
        for (var end = clock.Local + time; clock.Local < end;)
        {
            clock.Local += every;
            Say(150.0 + clock.Local.Minute / 100.0, 112.0 + clock.Local.Minute / 100.0);
            desk.Round();
        }
    }
}
