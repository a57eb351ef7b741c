using Boardwright.Testing;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Find;

/// <summary>Anything with a tag in the book has a page, and an address of the wrong kind leads there.</summary>
public sealed class TagPlaceTests
{
    [Theory]
    [InlineData("/orders/O-301", "O-301 is an order", "/promises/O-301")]
    [InlineData("/logs/V-19", "V-19 is a charge", "/charges/V-19")]
    [InlineData("/charges/S-06/read", "S-06 is a stack", "/stacks/S-06")]
    [InlineData("/stacks/d-41", "D-41 is a charge that is planned", "/charges/new?plan=D-41")]
    [InlineData("/packs/P-118", "P-118 is a pack", "/tally/P-118")]
    [InlineData("/tally/L-012", "L-012 is a log", "/logs/L-012")]
    [InlineData("/tables/T-1", "T-1 is a pour", "/pours/T-1")]
    [InlineData("/kilns/K1", "K1 is a kiln", "/charges")]
    [InlineData("/boilers/B1/", "B1 is a boiler", "/boiler")]
    public void Address_of_the_wrong_kind_leads_to_the_page_of_its_tag(string address, string words, string path)
    {
        var place = TagPlace.OfAddress(DemonstrationBook.Yard, address)!;

        Assert.Equal((words, path), (place.Words, place.Path));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("/")]
    [InlineData("/logs/X-999")]
    public void Address_that_names_nothing_leads_nowhere(string? address) => Assert.Null(TagPlace.OfAddress(DemonstrationBook.Yard, address));

    [Theory]
    [InlineData("/logs/V-19", "/charges/V-19")]
    [InlineData("/stacks/O-301/read", "/promises/O-301")]
    [InlineData("/charges/D-41", "/charges/new?plan=D-41")]
    [InlineData("/stacks/s-06", "/stacks/S-06")]
    [InlineData("/stacks/S-06/read", null)]
    [InlineData("/charges/new", null)]
    [InlineData("/charges/proof/S-06", null)]
    [InlineData("/history/S-06", null)]
    [InlineData("/logs/X-999", null)]
    public void Page_of_one_kind_asked_for_another_leads_there(string address, string? path) => Assert.Equal(path, TagPlace.OfWrongKind(DemonstrationBook.Yard, address)?.Path);

    [Fact]
    public void Everything_that_has_a_tag_is_found_by_it()
    {
        var state = DemonstrationBook.On(DemonstrationBook.LastDay);

        Assert.All([.. state.Orders.Keys, .. state.Stacks.Keys, .. state.Charges.Keys, .. state.PlannedCharges.Keys, .. state.Packs.Keys, .. state.Logs.Keys, .. state.Pours.Keys, .. state.Shipments.Keys], (string tag) =>
            Assert.Equal(tag, TagPlace.Of(state, tag)?.Tag));
    }
}
