using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.State;

/// <summary>A sensor and how it was last judged.</summary>
public sealed record Sensor(SensorPlaced Placed, SensorStanding Standing, DateTime? Since, string? Why, long Entry)
{
    public string Topic => Placed.Topic;
}
