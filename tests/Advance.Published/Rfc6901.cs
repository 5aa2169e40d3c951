using Advance.Domain.Figures;

namespace Advance.Published;

/// <summary>RFC 6901, JavaScript Object Notation (JSON) Pointer, April 2013: sections 3 to 5, from memory.</summary>
public sealed class Rfc6901
{
    [Theory]
    [InlineData("a/b", "a~1b")]
    [InlineData("m~n", "m~0n")]
    [InlineData("c%d", "c%d")]
    [InlineData(" ", " ")]
    [InlineData("~1", "~01")]
    public void Section_5_reference_tokens_are_escaped_tilde_first(string name, string token) =>
        Assert.Equal($"patch/{token}", (Address.Of("patch") / name).Text);
}
