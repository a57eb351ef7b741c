using Microsoft.Playwright;

namespace Boardwright.Browser.Tests;

/// <summary>What a person does on the pages of the day: is remembered, reads a number's basis by keyboard, changes the paper, and writes a form without signal.</summary>
[Collection(WritingTests.Name)]
public sealed class DayPageTests(ServedProgram served)
{
    [Fact]
    public async Task The_person_chosen_is_remembered_and_named_in_forms()
    {
        await using var leaf = await served.OpenAsync(Screen.Desktop);
        await leaf.GoAsync("/?who=Wren");
        await leaf.GoAsync("/pours/shop");

        await Assertions.Expect(leaf.Page.GetByLabel("Who")).ToHaveValueAsync("Wren");
        await Assertions.Expect(leaf.Page.Locator(".now").GetByRole(AriaRole.Link, new() { Name = "Wren" })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task A_form_without_signal_is_kept_and_sent_once_the_signal_is_back()
    {
        await using var leaf = await served.OpenAsync(Screen.Phone);
        await leaf.GoAsync("/pours/shop");
        await leaf.Page.GetByLabel("Shop, or with F").FillAsync("11.25");
        await leaf.Page.GetByLabel("Who").SelectOptionAsync("Oda");
        await leaf.Page.Context.SetOfflineAsync(true);
        await leaf.Page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();

        await Assertions.Expect(leaf.Page.GetByText("Kept on this phone: shop temperature")).ToBeVisibleAsync();
        await Assertions.Expect(leaf.Page.Locator("[data-waiting]").First).ToHaveTextAsync("1 waiting, no signal");

        await leaf.Page.Context.SetOfflineAsync(false);
        await Assertions.Expect(leaf.Page.Locator("[data-waiting]").First).ToBeHiddenAsync();
        await leaf.GoAsync("/pours/shop");

        await Assertions.Expect(leaf.Page.Locator("main").GetByText("11.3")).ToHaveCountAsync(1);
        await Assertions.Expect(leaf.Page.GetByLabel("Who")).ToHaveValueAsync("Oda");   // who wrote is remembered
    }

    [Fact]
    public async Task A_form_refused_after_waiting_stays_with_its_reason()
    {
        await using var leaf = await served.OpenAsync(Screen.Phone);
        await leaf.GoAsync("/pours/shop");
        await leaf.Page.GetByLabel("Shop, or with F").FillAsync("900");
        await leaf.Page.GetByLabel("Who").SelectOptionAsync("Oda");
        await leaf.Page.Context.SetOfflineAsync(true);
        await leaf.Page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await leaf.Page.Context.SetOfflineAsync(false);
        await leaf.GoAsync("/write");

        await Assertions.Expect(leaf.Page.Locator("[data-waiting-list]")).ToContainTextAsync("Not taken");
        await leaf.Page.GetByRole(AriaRole.Button, new() { Name = "Throw this one away" }).ClickAsync();
        await Assertions.Expect(leaf.Page.Locator("[data-waiting]").First).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Two_phones_without_signal_lay_two_values_of_one_log_side_by_side()
    {
        await using var first = await served.OpenAsync(Screen.Phone);
        await using var second = await served.OpenAsync(Screen.Phone);
        await first.GoAsync("/book?about=L-036");
        var entry = await first.Page.Locator("main .entries .when a").Last.GetAttributeAsync("href");
        await CorrectWithoutSignalAsync(first, entry!, "19.25", "Bram");
        await CorrectWithoutSignalAsync(second, entry!, "19.75", "Tam");

        await SignalAsync(first);
        await SignalAsync(second);
        await second.GoAsync("/logs/L-036");
        await second.Page.GetByRole(AriaRole.Link, new() { Name = "One thing was said twice, differently: choose" }).ClickAsync();
        await second.ArrivedAsync("/book/beside");

        var main = second.Page.Locator("main");
        await Assertions.Expect(main).ToContainTextAsync("19.25 in");
        await Assertions.Expect(main.GetByText("Bram, ")).ToHaveCountAsync(1);
        await second.IsSoundAsync();
        await second.PictureAsync("said-twice");
        await main.GetByRole(AriaRole.Button, new() { Name = "Take 19.75 in of Tam" }).ClickAsync();
        await Assertions.Expect(main).ToContainTextAsync("No two values wait");
        await second.GoAsync(entry!);
        await Assertions.Expect(second.Page.Locator("main")).ToContainTextAsync("19.75 in of Tam holds");
    }

    [Fact]
    public async Task Two_phones_without_signal_give_numbers_of_their_own()
    {
        await using var first = await served.OpenAsync(Screen.Phone);
        await using var second = await served.OpenAsync(Screen.Phone);
        var (ours, theirs) = (await NumberedAsync(first, "Bram"), await NumberedAsync(second, "Tam"));
        Assert.NotEqual(ours, theirs);

        await first.Page.Context.SetOfflineAsync(true);
        await first.Page.GetByLabel("Species").FillAsync("sugar maple");
        await first.Page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await Assertions.Expect(first.Page.GetByText("Kept on this phone: a log")).ToBeVisibleAsync();

        // The phone's own copy of the form shows the next number, not the one that waits.
        await first.GoAsync("/logs/new");
        await Assertions.Expect(first.Page.Locator("#log-tag")).ToHaveValueAsync($"L-{int.Parse(ours[2..], System.Globalization.CultureInfo.InvariantCulture) + 1:000}");
        await second.GoAsync("/write/numbers");
        await Assertions.Expect(second.Page.Locator("main")).ToContainTextAsync("Bram, since");
        await second.IsSoundAsync();
        await second.PictureAsync("numbers");
    }

    private static async Task<string> NumberedAsync(Leaf leaf, string person)
    {
        await leaf.GoAsync($"/?who={person}");
        await leaf.Page.WaitForFunctionAsync("() => navigator.serviceWorker.controller !== null");
        await leaf.GoAsync("/logs/new");
        await leaf.Page.WaitForFunctionAsync("() => (JSON.parse(localStorage.getItem('boardwright-numbers') ?? '{}').left?.['L-'] ?? []).length > 0");
        return await leaf.Page.Locator("#log-tag").InputValueAsync();
    }

    private static async Task CorrectWithoutSignalAsync(Leaf leaf, string entry, string inches, string by)
    {
        await leaf.GoAsync(entry);
        await leaf.Page.Locator("#f-small_end_a_mm").FillAsync(inches);
        await leaf.Page.GetByLabel("Why it is corrected").FillAsync("measured again");
        await leaf.Page.GetByLabel("Who").SelectOptionAsync(by);
        await leaf.Page.Context.SetOfflineAsync(true);
        await leaf.Page.GetByRole(AriaRole.Button, new() { Name = "Write the correction" }).ClickAsync();
        await Assertions.Expect(leaf.Page.GetByText("Kept on this phone: correction")).ToBeVisibleAsync();
    }

    private static async Task SignalAsync(Leaf leaf)
    {
        await leaf.Page.Context.SetOfflineAsync(false);
        await Assertions.Expect(leaf.Page.Locator("[data-waiting]").First).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Keyboard_reaches_the_entry_first_and_opens_a_numbers_basis()
    {
        await using var leaf = await served.OpenAsync(Screen.Desktop);
        await leaf.GoAsync("/?who=Pell");
        await leaf.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(leaf.Page.GetByRole(AriaRole.Link, new() { Name = "To the entry" })).ToBeFocusedAsync();

        var basis = leaf.Page.Locator(".figure summary").First;
        await basis.FocusAsync();
        await leaf.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(leaf.Page.GetByText("2,753.2 g dry")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Sun_key_changes_the_paper_and_the_phone_remembers_it()
    {
        await using var leaf = await served.OpenAsync(Screen.Phone);
        await leaf.GoAsync("/");
        var sun = leaf.Page.GetByRole(AriaRole.Button, new() { Name = "Sun" });

        await sun.ClickAsync();
        await leaf.GoAsync("/stacks");

        await Assertions.Expect(sun).ToHaveAttributeAsync("aria-pressed", "true");
        await Assertions.Expect(leaf.Page.Locator("html")).ToHaveAttributeAsync("data-theme", "noon");
    }
}
