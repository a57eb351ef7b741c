using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>The people of the yard.</summary>
public static class User
{
    public static Command Command { get; } = Command.Of("user", "", "Lists the people of the yard; with a NAME and what they do, adds or changes one", Run) with
    {
        AtTerminalOnly = true,
        Argument = new("NAME", "whom to add or change", IsRequired: false),
        Options =
        [
            Option.Optional("role", "TEXT", "what they do, such as \"kiln hand\""),
            Option.Optional("paid-per-hour", "N", "what an hour costs, in your money, such as 24"),
            Option.Optional("loads-kilns", "yes|no", "may help to load a kiln (default no)"),
            Option.Optional("leads-loading", "yes|no", "may lead the loading (default no)"),
            Option.Optional("by", "NAME", "who says so (default: the person themself)"),
            .. BookPlace.Options,
        ],
        Examples = ["user --yard demonstration", "user Ida --role \"kiln hand\" --paid-per-hour 24 --loads-kilns yes --yard demonstration"],
    };

    public sealed record Person(string Name, string Role, decimal PaidPerHourMoney, bool LoadsKilns, bool LeadsLoading);

    public sealed record Answer(string Book, IReadOnlyList<Person> People, string? Added, string? Changed);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var place = ask.BookPlace() ?? BookPlace.Usual;
        var book = ask.Book();
        if (book is null)
            return ask.Refused<Answer>();

        var people = book.State.People;
        if (ask.Argument is not { } name)
            return Told(place, book, null, null);

        var known = people.GetValueOrDefault(name);
        if (known is null && people.Keys.FirstOrDefault(other => string.Equals(other, name, StringComparison.OrdinalIgnoreCase)) is { } alike)
            return new Refusal("NAME", name, $"{alike}, who is in the book, or another name");
        var wanted = Wanted(ask, name, known);
        if (ask.Refuses)
            return ask.Refused<Answer>();
        if (wanted == known)
            return Told(place, book, null, null);

        return book.Write(ask.TextOrNull("by") ?? name, wanted).Then(_ => Told(place, book, known is null ? name : null, known is null ? null : name));
    }

    private static PersonNamed Wanted(Ask ask, string name, PersonNamed? known)
    {
        if (known is null && !ask.Has("role"))
            ask.Refuse("role", "nothing", "what a new person does, such as \"kiln hand\"");
        if (known is null && !ask.Has("paid-per-hour"))
            ask.Refuse("paid-per-hour", "nothing", "what an hour of a new person costs, such as 24; 0 for nothing");
        var paid = ask.Has("paid-per-hour") ? ask.Number("paid-per-hour") : (double)(known?.PaidPerHourMoney ?? 0m);
        if (paid is < 0.0 or > 10000.0)
            ask.Refuse("paid-per-hour", ask.Text("paid-per-hour"), "0 to 10000");
        return new(
            name, ask.TextOrNull("role") ?? known?.Role ?? "", Math.Clamp((decimal)paid, 0m, 10000m),
            ask.Choice("loads-kilns", known?.LoadsKilns == true ? "yes" : "no", "yes", "no") == "yes",
            ask.Choice("leads-loading", known?.LeadsLoading == true ? "yes" : "no", "yes", "no") == "yes");
    }

    private static Outcome<Answer> Told(BookPlace place, YardBook book, string? added, string? changed) => new Answer(
        place.ToString()!, [.. book.State.People.Values.Select(p => new Person(p.Person, p.Role, p.PaidPerHourMoney, p.LoadsKilns, p.LeadsLoading))], added, changed);
}
