//! Runs a check over many seeds on all threads; each seed is a case that can be run again by itself.

/// How many cases to run: what the environment asks for under this name, else the usual number.
pub fn asked(variable: &str, usual: u64) -> u64 {
    std::env::var(variable).ok().and_then(|text| text.parse().ok()).unwrap_or(usual)
}

/// Adds what one thread summed up to what others did.
pub fn add<const COUNT: usize>(sums: &mut [f64; COUNT], more: [f64; COUNT]) {
    sums.iter_mut().zip(more).for_each(|(sum, more)| *sum += more);
}

/// Runs `each` for every seed below `count` and adds up what the threads counted.
///
/// # Panics
/// When a case does.
pub fn on_all_threads<T: Send + Default>(
    count: u64,
    each: impl Fn(&mut T, u64) + Sync,
    add: impl Fn(&mut T, T),
) -> T {
    let threads = std::thread::available_parallelism().map_or(1, |count| count.get() as u64);
    let mut total = T::default();
    std::thread::scope(|scope| {
        let each = &each;
        let work = move |first: u64| {
            let mut part = T::default();
            (first..count).step_by(threads as usize).for_each(|seed| each(&mut part, seed));
            part
        };
        let workers: Vec<_> = (0..threads).map(|first| scope.spawn(move || work(first))).collect();
        for worker in workers {
            add(&mut total, worker.join().expect("a worker ends"));
        }
    });
    total
}
