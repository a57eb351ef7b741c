using Boardwright.Web.Layout;

namespace Boardwright.Web.Tests.Pages;

/// <summary>Two yards served on one machine share the browser's cookies of that host: a port is no part of a cookie's place (RFC 6265, 8.5).</summary>
public sealed class YardCookiesTests
{
    [Fact]
    public void Two_yards_name_their_cookies_apart_and_one_yard_keeps_its_names()
    {
        var (one, other) = (YardCookies.Of("yards/one/keys"), YardCookies.Of("yards/other/keys"));

        Assert.Equal(4, new[] { one.Who, one.Forms, other.Who, other.Forms }.Distinct().Count());
        Assert.Equal(one, YardCookies.Of("yards/other/../one/keys"));
        Assert.All(new[] { one.Who, one.Forms }, name => Assert.Matches("^[a-z0-9-]+$", name));
    }
}
