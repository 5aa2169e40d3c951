namespace Advance.Handbook;

/// <summary>How a supply and the things on it are earthed, as far as disconnection asks. IT, which goes on after a first fault, is not covered.</summary>
public enum EarthingSystem
{
    /// <summary>TN-S and TN-C-S: the fault returns by a conductor.</summary>
    TN,

    /// <summary>The fault returns through the ground, and only a residual current device is sure to open.</summary>
    TT,
}
