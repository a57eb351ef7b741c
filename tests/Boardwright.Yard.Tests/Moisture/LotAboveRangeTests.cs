using System.Text.Json;

namespace Boardwright.Yard.Tests.Moisture;

/// <summary>A reading above the meter's range is kept and counted, never averaged (usable from 7 to 28 %: see MeterReading).</summary>
public sealed class LotAboveRangeTests
{
    [Fact]
    public void Reading_above_the_range_leaves_the_lot_without_a_mean_and_unaccepted()
    {
        var lot = Answers.Json("moisture lot --readings 22%,24%,31% --target 24% --allow 3%");

        Assert.Equal(3, lot.GetProperty("count").GetInt32());
        Assert.Equal(1, lot.GetProperty("above_range").GetInt32());
        Assert.Equal(JsonValueKind.Null, lot.TryGetProperty("mean_pct", out var mean) ? mean.ValueKind : JsonValueKind.Null);
        Assert.False(lot.GetProperty("accepted").GetBoolean());
        Assert.Contains("oven sections", lot.GetProperty("why").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Oven_sections_have_no_such_range()
    {
        var lot = Answers.Json("moisture lot --readings 30%,40%,50% --by oven");

        Assert.Equal(0, lot.GetProperty("above_range").GetInt32());
        Assert.Equal(40.0, lot.GetProperty("mean_pct").GetDouble(), 9);
    }

    [Fact]
    public void Reading_just_at_the_range_is_a_number() =>
        Assert.Equal(27.0, Answers.Json("moisture lot --readings 26%,28%").GetProperty("mean_pct").GetDouble(), 9);
}
