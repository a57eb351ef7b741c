using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Boardwright.Yard.Book;

namespace Boardwright.Storage;

/// <summary>An entry as a row. Facts are kept as their JSON text, letter by letter: no database may round or reorder them.</summary>
public sealed class EntryRow
{
    public long Number { get; init; }

    public Guid Id { get; init; }

    /// <summary>UTC.</summary>
    public DateTime WrittenAtUtc { get; init; }

    /// <summary>Yard-local, without a zone.</summary>
    public DateTime HappenedAt { get; init; }

    public required string By { get; init; }

    /// <summary>The fact's kind, for looking at the table.</summary>
    public required string Kind { get; init; }

    public required string Fact { get; init; }

    public long? Corrects { get; init; }

    public string? Reason { get; init; }

    public string? AsEntered { get; init; }

    /// <summary>Hash of this row and of the seal before it: a row changed behind the book's back breaks every seal from there on.</summary>
    public required string Seal { get; init; }

    public static EntryRow Of(Entry entry, string sealBefore)
    {
        var fact = BookJson.Line(entry.Fact);
        using var kind = JsonDocument.Parse(fact);
        var asEntered = entry.AsEntered is null ? null : JsonSerializer.Serialize(entry.AsEntered, BookJson.Options);
        return new()
        {
            Number = entry.Number,
            Id = entry.Id,
            WrittenAtUtc = entry.WrittenAtUtc,
            HappenedAt = entry.HappenedAt,
            By = entry.By,
            Kind = kind.RootElement.GetProperty("kind").GetString()!,
            Fact = fact,
            Corrects = entry.Corrects,
            Reason = entry.Reason,
            AsEntered = asEntered,
            Seal = SealOf(sealBefore, entry, fact, asEntered),
        };
    }

    public Entry ToEntry() => new(
        Number, Id, WrittenAtUtc, HappenedAt, By, BookJson.ReadFact(Fact), Corrects, Reason,
        AsEntered is null ? null : JsonSerializer.Deserialize<Dictionary<string, string>>(AsEntered, BookJson.Options));

    /// <summary>The seal this row should have after the one before it.</summary>
    public string ExpectedSeal(string sealBefore) => SealOf(sealBefore, new(Number, Id, WrittenAtUtc, HappenedAt, By, null!, Corrects, Reason), Fact, AsEntered);

    private static string SealOf(string before, Entry entry, string fact, string? asEntered) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join(
        '\n', before, entry.Number.ToString(CultureInfo.InvariantCulture), entry.Id.ToString(), entry.WrittenAtUtc.ToString("O", CultureInfo.InvariantCulture),
        entry.HappenedAt.ToString("O", CultureInfo.InvariantCulture), entry.By, fact, entry.Corrects?.ToString(CultureInfo.InvariantCulture), entry.Reason, asEntered))));
}
