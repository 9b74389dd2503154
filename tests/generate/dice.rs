//! Chance that can be repeated: one seed, one game.

/// A sequence of choices drawn from a seed (`SplitMix64`, from memory).
#[derive(Clone, Debug)]
pub struct Dice(u64);

impl Dice {
    /// The choices of a seed.
    pub const fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// Any number.
    pub const fn number(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A number from 0 to `n - 1`; 0 if `n` is 0.
    pub const fn below(&mut self, n: usize) -> usize {
        if n == 0 { 0 } else { (self.number() % n as u64) as usize }
    }

    /// A small number from 0 to `n - 1`.
    pub const fn small(&mut self, n: u8) -> u8 {
        self.below(n as usize) as u8
    }

    /// True so many times in a thousand.
    pub const fn thousandth(&mut self, n: usize) -> bool {
        self.below(1000) < n
    }

    /// True so many times in a hundred.
    pub const fn percent(&mut self, n: usize) -> bool {
        self.below(100) < n
    }

    /// One of these.
    ///
    /// # Panics
    /// If there are none.
    pub fn pick<T: Copy>(&mut self, of: &[T]) -> T {
        of[self.below(of.len())]
    }

    /// One of these, each as likely as its weight.
    ///
    /// # Panics
    /// If there are none.
    pub fn weighted<T: Copy>(&mut self, of: &[(usize, T)]) -> T {
        let mut at = self.below(of.iter().map(|(weight, _)| weight).sum());
        for (weight, one) in of {
            if at < *weight {
                return *one;
            }
            at -= weight;
        }
        of[of.len() - 1].1
    }

    /// In any order.
    pub fn shuffle<T>(&mut self, list: &mut [T]) {
        for i in (1..list.len()).rev() {
            list.swap(i, self.below(i + 1));
        }
    }
}
