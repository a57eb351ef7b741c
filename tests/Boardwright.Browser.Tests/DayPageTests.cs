using Microsoft.Playwright;

namespace Boardwright.Browser.Tests;

/// <summary>Pages of the day: each person's sheet, a pour and its forms, find, the questions, the walk; and a form written without signal.</summary>
public sealed class DayPageTests(ServedProgram served)
{
    public static TheoryData<string, string> Pages => new()
    {
        { "morning-office", "/?who=Oda" }, { "morning-kilns", "/?who=Pell" }, { "morning-hands", "/?who=Tam" }, { "pour", "/pours/T-5" }, { "pour-soft", "/pours/Q-3" }, { "pour-cannot", "/pours/T-8" },
        { "pour-mix", "/pours/T-1/mix" }, { "pour-out", "/pours/T-1/demould" }, { "shop", "/pours/shop" }, { "resin", "/pours/resin" },
        { "found", "/find?text=cherry" }, { "questions", "/questions" }, { "tour", "/tour" }, { "write-casting", "/write?who=Wren" },
    };

    [Theory, MemberData(nameof(Pages))]
    public async Task Page_of_the_day_is_sound_at_both_sizes_and_in_the_dark(string name, string path)
    {
        foreach (var (screen, paper) in new[] { (Screen.Phone, Paper.Day), (Screen.Desktop, Paper.Day), (Screen.Phone, Paper.Dawn) })
        {
            await using var leaf = await served.OpenAsync(screen, paper);
            await leaf.GoAsync(path);
            await leaf.PictureAsync(paper == Paper.Day ? name : $"{name}-dawn");
            await leaf.IsSoundAsync();
        }
    }

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
        await leaf.Page.Context.SetOfflineAsync(true);
        await leaf.Page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();

        await Assertions.Expect(leaf.Page.GetByText("Kept on this phone: shop temperature")).ToBeVisibleAsync();
        await Assertions.Expect(leaf.Page.Locator("[data-waiting]").First).ToHaveTextAsync("1 waiting, no signal");

        await leaf.Page.Context.SetOfflineAsync(false);
        await Assertions.Expect(leaf.Page.Locator("[data-waiting]").First).ToBeHiddenAsync();
        await leaf.GoAsync("/pours/shop");

        await Assertions.Expect(leaf.Page.Locator("main").GetByText("11.3")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task A_form_refused_after_waiting_stays_with_its_reason()
    {
        await using var leaf = await served.OpenAsync(Screen.Phone);
        await leaf.GoAsync("/pours/shop");
        await leaf.Page.GetByLabel("Shop, or with F").FillAsync("900");
        await leaf.Page.Context.SetOfflineAsync(true);
        await leaf.Page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).ClickAsync();
        await leaf.Page.Context.SetOfflineAsync(false);
        await leaf.GoAsync("/write");

        await Assertions.Expect(leaf.Page.Locator("[data-waiting-list]")).ToContainTextAsync("Not taken");
        await leaf.Page.GetByRole(AriaRole.Button, new() { Name = "Throw this one away" }).ClickAsync();
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
}
