namespace Advance.Domain.Figures;

/// <summary>
/// What was chosen, by address, in words that can be read back: a port (<c>SB1 in 3</c>), an outlet, the leads of a run, an address on the
/// network. The last issue's choices are what the next plan stays near to.
/// </summary>
public sealed class Choices
{
    /// <summary>Nothing was chosen yet.</summary>
    public static readonly Choices None = new([]);

    private readonly Dictionary<Address, string> byAddress;

    /// <summary>Choices by what was chosen for; the last of one address holds.</summary>
    public Choices(IEnumerable<KeyValuePair<Address, string>> choices)
    {
        byAddress = [];
        foreach (var (address, choice) in choices)
        {
            byAddress[address] = choice;
        }
    }

    /// <summary>How many.</summary>
    public int Count => byAddress.Count;

    /// <summary>Everything chosen, in the order of the addresses.</summary>
    public IEnumerable<KeyValuePair<Address, string>> InOrder => byAddress.OrderBy(choice => choice.Key);

    /// <summary>What was chosen there; null where nothing was.</summary>
    public string? Of(Address address) => byAddress.GetValueOrDefault(address);
}
