//! A cursor over the text of one designation, and the refusals that quote it.

use crate::{Error, ErrorKind};

#[cold]
pub(super) fn refuse(
    kind: ErrorKind,
    field: &'static str,
    text: &str,
    problem: &'static str,
    remedy: &'static str,
) -> Error {
    Error::new(kind, field, text, problem, remedy)
}

#[cold]
pub(super) fn not_a_designation(text: &str) -> Error {
    refuse(
        ErrorKind::Text,
        "thread",
        text,
        "not a thread designation",
        "write e.g. `M10x1-6H`, `1.370 in x 24 tpi BSC`, `9/16-20 UN` or `36 mm x 24 tpi`",
    )
}

/// A cursor over the text of one designation.
pub(super) struct Cursor<'t> {
    pub text: &'t str,
    pub rest: &'t str,
    comma: bool,
    point: bool,
}

impl<'t> Cursor<'t> {
    pub fn new(text: &'t str) -> Self {
        Self {
            text,
            rest: text,
            comma: false,
            point: false,
        }
    }

    pub fn spaces(&mut self) {
        self.rest = self.rest.trim_start();
    }

    pub fn eat(&mut self, word: &str) -> bool {
        match self.rest.get(..word.len()) {
            Some(front) if front.eq_ignore_ascii_case(word) => {
                self.rest = self.rest.get(word.len()..).unwrap_or_default();
                true
            }
            _ => false,
        }
    }

    /// Whether the next byte is a digit.
    pub fn digit_next(&self) -> bool {
        self.rest.as_bytes().first().is_some_and(u8::is_ascii_digit)
    }

    pub fn whole(&mut self) -> Option<u32> {
        let digits = self.rest.bytes().take_while(u8::is_ascii_digit).count();
        if digits == 0 || digits > 6 {
            return None;
        }
        let (front, back) = self.rest.split_at_checked(digits)?;
        self.rest = back;
        Some(front.bytes().fold(0, |n, b| n * 10 + u32::from(b - b'0')))
    }

    /// A decimal number as digits and their scale, so that it is rounded once.
    pub fn number(&mut self) -> Result<f64, Error> {
        const POWERS: [f64; 10] = [1.0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9];
        let mut digits: u64 = 0;
        let mut count = 0;
        let mut after: Option<usize> = None;
        let mut used = 0;
        for b in self.rest.bytes() {
            match b {
                b'0'..=b'9' => {
                    digits = digits * 10 + u64::from(b - b'0');
                    count += 1;
                    if let Some(places) = &mut after {
                        *places += 1;
                    }
                }
                // A comma before a space ends the number: `M10x1, LH`.
                b',' if self.rest.as_bytes().get(used + 1) == Some(&b' ') => break,
                b'.' | b',' if after.is_none() => {
                    after = Some(0);
                    if b == b',' {
                        self.comma = true;
                    } else {
                        self.point = true;
                    }
                }
                b'.' | b',' => return Err(not_a_designation(self.text)),
                _ => break,
            }
            used += 1;
            if count > 9 {
                return Err(refuse(
                    ErrorKind::Text,
                    "thread",
                    self.text,
                    "a number with more than nine digits",
                    "no thread is known that well",
                ));
            }
        }
        if self.comma && self.point {
            return Err(refuse(
                ErrorKind::Text,
                "thread",
                self.text,
                "a decimal comma and a decimal point in one designation",
                "use one decimal mark throughout",
            ));
        }
        let places = after.unwrap_or(0);
        if count == 0 || after == Some(0) {
            return Err(not_a_designation(self.text));
        }
        self.rest = self.rest.get(used..).unwrap_or_default();
        #[expect(clippy::cast_precision_loss, reason = "at most nine digits")]
        let value = digits as f64 / POWERS.get(places).copied().unwrap_or(1.0);
        Ok(value)
    }

    pub fn times(&mut self) -> bool {
        self.spaces();
        let found = self.eat("x") || self.eat("×") || self.eat("*");
        self.spaces();
        found
    }
}
