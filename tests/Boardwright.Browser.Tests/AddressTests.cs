using Boardwright.Web.Layout;
using Microsoft.AspNetCore.Components;

namespace Boardwright.Browser.Tests;

/// <summary>The list of addresses against the program's own routes: a page added without being looked at fails here.</summary>
public sealed class AddressTests
{
    // Not an address of its own: what every unknown one shows.
    private const string NotThere = "/not-there";

    [Fact]
    public void Every_page_of_the_program_is_on_the_list()
    {
        var routes = Routes();
        Assert.True(routes.Count > 40, $"{routes.Count} routes found");

        var seen = Addresses.All.Select(row => RouteOf(routes, row.Data.Item2)).ToHashSet();

        Assert.Equal([], routes.Except([NotThere]).Except(seen));
    }

    [Theory]
    [InlineData("/tally/new", "/tally/new")]
    [InlineData("/tally/P-118?x=1", "/tally/{Tag}")]
    [InlineData("/nothing-here", null)]
    public void Path_belongs_to_the_route_that_names_it_best(string path, string? route) => Assert.Equal(route, RouteOf(Routes(), path));

    private static List<string> Routes() =>
        [.. typeof(App).Assembly.GetTypes().SelectMany(type => type.GetCustomAttributes(typeof(RouteAttribute), inherit: false)).Cast<RouteAttribute>().Select(route => route.Template)];

    private static string? RouteOf(IEnumerable<string> routes, string path)
    {
        var parts = path.Split('?')[0].Split('/');
        return routes.Where(route => Fits(route.Split('/'), parts)).MaxBy(route => route.Split('/').Count(part => !part.StartsWith('{')));
    }

    private static bool Fits(string[] route, string[] path) => route.Length == path.Length && route.Zip(path).All(pair => pair.First.StartsWith('{') || pair.First == pair.Second);
}
