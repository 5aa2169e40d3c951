using Advance.Sheets.Views;

namespace Advance.Tests.Sheets.Views;

public sealed class NameListTests
{
    [Theory]
    [InlineData("T1-1", "T1-1")]
    [InlineData("T1-1, T1-5", "T1-1; T1-5")]
    [InlineData("T1-1 to T1-5, T2-4", "T1-1; T1-2; T1-3; T1-4; T1-5; T2-4")]
    [InlineData("T1-1, T1-2", "T1-1; T1-1; T1-2")]
    [InlineData("PD1 outlet 1, 3", "PD1 outlet 1; PD1 outlet 3")]
    [InlineData("PD1 outlet 9 to 11", "PD1 outlet 9; PD1 outlet 10; PD1 outlet 11")]
    [InlineData("PD1 outlet 7 L1, L2, 13 L2", "PD1 outlet 7 L1; PD1 outlet 7 L2; PD1 outlet 13 L2")]
    [InlineData("quad 1 outlet 1, quad 2 outlet 1", "quad 1 outlet 1; quad 2 outlet 1")]
    [InlineData("shackle of T1-1 to T1-3, T2-1", "shackle of T1-1; shackle of T1-2; shackle of T1-3; shackle of T2-1")]
    [InlineData("Main SL, SR, Delay", "Main SL; Main SR; Delay")]
    [InlineData("A01, A02, A03", "A01; A02; A03")]
    public void Names_that_are_alike_are_said_once(string said, string names) => Assert.Equal(said, NameList.Say(names.Split("; ")));
}
