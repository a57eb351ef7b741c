using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>Writes the shop's temperature: now, or at an hour of today.</summary>
public static class PourWarmth
{
    /// <param name="book">The book.</param>
    /// <param name="temperature">°C, or with F.</param>
    /// <param name="hour">Such as 21:30; empty for now.</param>
    /// <param name="by">Who read it.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, string? temperature, string? hour, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        var shop = read.Celsius("Shop, °C", temperature);
        if (shop.Celsius is < -40.0 or > 60.0)
            read.Refuse("Shop, °C", temperature, "-40 to 60 °C");
        var at = read.Time(book, key);
        if (!string.IsNullOrWhiteSpace(hour))
        {
            if (TimeOnly.TryParseExact(hour.Trim(), "H:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
                at = DateOnly.FromDateTime(at).ToDateTime(time);
            else
                read.Refuse("Hour", hour, "an hour of today, such as 21:30");
        }

        var who = read.By(book.State, by);
        return read.Then(() => key.Write(book, who, new ShopTemperatureRead([new(at, shop.Celsius)]), new Dictionary<string, string>(StringComparer.Ordinal) { ["shop_c"] = temperature! }, at));
    }
}
