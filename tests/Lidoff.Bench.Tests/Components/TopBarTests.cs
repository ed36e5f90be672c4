using Bunit;
using Lidoff.Bench.Components.Layout;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Lidoff.Bench.Tests.Components;

public sealed class TopBarTests : BunitContext
{
    [Fact]
    public void The_way_past_the_bar_leads_to_the_content_of_the_page_one_is_on()
    {
        Renderer.SetRendererInfo(new("Server", true));
        var bar = Render<TopBar>();
        Services.GetRequiredService<NavigationManager>().NavigateTo("/dossiers/d/see?x=1");
        bar.WaitForAssertion(() => Assert.Equal("/dossiers/d/see?x=1#content", bar.Find("a.skip").GetAttribute("href")), TimeSpan.FromSeconds(20));
    }
}
