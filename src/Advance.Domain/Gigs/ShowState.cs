namespace Advance.Domain.Gigs;

/// <summary>What is going on. What is switched on, and how hard it works, hangs on it.</summary>
public enum ShowState
{
    /// <summary><c>show</c>: somebody performs.</summary>
    Show,

    /// <summary><c>sound check</c></summary>
    SoundCheck,

    /// <summary><c>changeover</c>: between performances, also before the first; nobody performs, music may play.</summary>
    Changeover,

    /// <summary><c>build</c>: setting up and taking down.</summary>
    Build,

    /// <summary><c>night</c>: nobody is there but what guards and lights the place.</summary>
    Night,
}
