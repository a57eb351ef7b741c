using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>A kind of tag that is numbered.</summary>
/// <param name="Prefix">Its letters.</param>
/// <param name="Words">What it numbers.</param>
/// <param name="Digits">Least digits of the number.</param>
public sealed record TagKind(string Prefix, string Words, int Digits);

/// <summary>Numbers of new logs, stacks, packs and orders. A phone gives only those set aside for it, so that two without signal never give one twice.</summary>
public static class TagNumbers
{
    public const string Logs = "L-", Stacks = "S-", Packs = "P-", Orders = "O-";

    // A morning's logs; more are set aside whenever the phone is online with few left.
    private const int Block = 10;
    private const int Few = 5;

    /// <summary>What is numbered.</summary>
    public static IReadOnlyList<TagKind> Kinds { get; } = [new(Logs, "logs", 3), new(Stacks, "stacks", 2), new(Packs, "packs", 3), new(Orders, "orders", 3)];

    /// <summary>The next number: of those set aside for the phone, else the one after all that are used or set aside.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="prefix">Letters of the tag.</param>
    /// <param name="phone">The phone's name; null for a machine without numbers of its own.</param>
    public static string Next(YardState state, string prefix, string? phone = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        return phone is not null && Left(state, phone, prefix) is [var own, ..] ? own : Tag(prefix, Highest(state, prefix) + 1);
    }

    /// <summary>Numbers of a phone that nothing has yet, lowest first.</summary>
    public static IReadOnlyList<string> Left(YardState state, string phone, string prefix)
    {
        ArgumentNullException.ThrowIfNull(state);
        var used = Used(state, prefix).ToHashSet();
        return [.. state.NumbersAside.Where(block => block.Phone == phone && block.Prefix == prefix).SelectMany(block => Enumerable.Range(block.First, block.Last - block.First + 1)).Where(number => !used.Contains(number)).Order().Select(number => Tag(prefix, number))];
    }

    /// <summary>The refusal of a number that is another phone's; null for one that may be given.</summary>
    public static Refusal? Fault(YardState state, string what, string tag, string? phone)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Kinds.FirstOrDefault(kind => tag.StartsWith(kind.Prefix, StringComparison.Ordinal)) is { } kind && Number(tag, kind.Prefix) is { } number
            && state.NumbersAside.Find(block => block.Prefix == kind.Prefix && block.First <= number && number <= block.Last && block.Phone != phone) is { } block
                ? new Refusal(what, tag, $"a number that is not set aside for {block.Phone} ({block.By}), such as {Next(state, kind.Prefix, phone)}; or release them (Write, Numbers of the phones)") : null;
    }

    /// <summary>Sets numbers aside where a phone has few left, and names a phone that has no name yet. Nothing is written where it has enough.</summary>
    /// <param name="book">The book.</param>
    /// <param name="phone">Its name; null or unknown for a new one.</param>
    /// <param name="by">Who has it.</param>
    /// <returns>The phone's name.</returns>
    public static Outcome<string> SetAside(YardBook book, string? phone, string? by)
    {
        ArgumentNullException.ThrowIfNull(book);
        var state = book.State;
        if (by is null || !state.People.ContainsKey(by))
            return new Refusal("Who", by ?? "", "a person of the house");
        var name = phone is not null && Named(state).Contains(phone) ? phone : string.Create(CultureInfo.InvariantCulture, $"phone {Named(state).Count + 1}");
        var wanted = Kinds.Where(kind => Left(state, name, kind.Prefix).Count < Few).Select(kind => new NewEntry(by, new NumbersSetAside(name, kind.Prefix, Highest(state, kind.Prefix) + 1, Block))).ToList();
        return wanted.Count == 0 ? name : book.Write(wanted).Then<string>(_ => name);
    }

    /// <summary>Releases what a phone has not used: its entries are taken out by corrections.</summary>
    public static Outcome<IReadOnlyList<Entry>> Release(YardBook book, string phone, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        var who = read.By(book.State, by);
        var blocks = book.State.NumbersAside.Where(block => block.Phone == phone).ToList();
        if (blocks.Count == 0)
            read.Refuse("Phone", phone, "a phone that has numbers set aside");
        return read.Then(() => book.Write([.. blocks.Select((block, index) => new NewEntry(who, new Withdrawn(), null, block.Entry, $"numbers of {phone} released", Id: index == 0 ? key.Id : key.Numbered(index)))]));
    }

    // Every phone that ever had numbers, released ones too: a name is not given twice.
    private static HashSet<string> Named(YardState state) => [.. state.Entries.Select(entry => entry.Fact).OfType<NumbersSetAside>().Select(fact => fact.Phone)];

    private static int Highest(YardState state, string prefix) => Used(state, prefix).Concat(state.NumbersAside.Where(block => block.Prefix == prefix).Select(block => block.Last)).DefaultIfEmpty(0).Max();

    private static IEnumerable<int> Used(YardState state, string prefix) => (prefix switch
    {
        Logs => state.Logs.Keys,
        Stacks => state.Stacks.Keys,
        Packs => state.Packs.Keys,
        _ => state.Orders.Keys,
    }).Select(tag => Number(tag, prefix)).OfType<int>();

    private static int? Number(string tag, string prefix) => tag.StartsWith(prefix, StringComparison.Ordinal) && int.TryParse(tag.AsSpan(prefix.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>The tag of a number.</summary>
    public static string Tag(string prefix, int number) => prefix + number.ToString(CultureInfo.InvariantCulture).PadLeft(Kinds.FirstOrDefault(kind => kind.Prefix == prefix)?.Digits ?? 1, '0');
}
