/* The native status sentences in C99: no allocation, no printf, no floating point. Copy it into a firmware as it is.
   One call of emit_* puts one whole sentence out through emit_put, byte by byte; nothing is kept but the sequence number. */
#ifndef EMITTER_H
#define EMITTER_H
#include <stddef.h>
#include <stdint.h>

/* Yours: queue one byte for the wire. It must not wait: a status that blocks the control loop is worse than none. */
void emit_put(char byte);

static uint16_t emit_seq;
static uint8_t emit_sum;

static void emit_char(char c) { emit_sum ^= (uint8_t)c; emit_put(c); }
static void emit_text(const char *s) { while (*s) emit_char(*s++); }
static void emit_begin(const char *address) { emit_put('$'); emit_sum = 0; emit_text(address); }

static void emit_end(void) {
  static const char hex[] = "0123456789ABCDEF";
  uint8_t sum = emit_sum;
  emit_put('*'); emit_put(hex[sum >> 4]); emit_put(hex[sum & 15]); emit_put('\r'); emit_put('\n');
}

static void emit_number(uint32_t n) {
  char digits[10];
  int i = 0;
  do { digits[i++] = (char)('0' + n % 10); n /= 10; } while (n);
  while (i) emit_char(digits[--i]);
}

/* A length in thousandths: 12345 is written 12.345. */
static void emit_thousandths(int32_t v) {
  uint32_t n = v < 0 ? 0u - (uint32_t)v : (uint32_t)v;
  if (v < 0) emit_char('-');
  emit_number(n / 1000);
  emit_char('.');
  emit_char((char)('0' + n / 100 % 10)); emit_char((char)('0' + n / 10 % 10)); emit_char((char)('0' + n % 10));
}

/* On opening and every 5 s. units: "mm" or "inch"; axes: "XYZ"; names: what fits into 240 bytes, the others as PTWRN. */
static inline void emit_declaration(const char *units, const char *axes, const char *const *names, size_t count) {
  size_t i, length, used = 18; /* $PTWRD,1, the commas, the sum and the line end */
  const char *s;
  for (s = units; *s; s++) used++;
  for (s = axes; *s; s++) used++;
  emit_begin("PTWRD,1,"); emit_text(units); emit_char(','); emit_text(axes); emit_char(',');
  for (i = 0; i < count; i++) {
    for (length = 1, s = names[i]; *s; s++) length++;
    if (used + length > 240) {
      emit_end(); emit_begin("PTWRN,"); emit_number((uint32_t)i); emit_char(',');
      used = 16;
    } else if (i) emit_char(' ');
    emit_text(names[i]);
    used += length;
  }
  emit_end();
}

/* levels and active: bit n is input n; ms: a clock that only a restart sets back; pos in thousandths, commanded, machine frame. */
static inline void emit_status(uint32_t ms, const char *activity, uint64_t levels, uint64_t active, int inputs,
                               const int32_t *pos, int axes) {
  int i;
  emit_begin("PTWRS,"); emit_number(emit_seq++); emit_char(','); emit_number(ms); emit_char(','); emit_text(activity);
  emit_char(',');
  for (i = 0; i < inputs; i++) emit_char(levels >> i & 1 ? 'H' : 'L');
  emit_char(',');
  for (i = 0; i < inputs; i++) emit_char(active >> i & 1 ? '1' : '0');
  for (i = 0; i < axes; i++) { emit_char(','); emit_thousandths(pos[i]); }
  emit_end();
}

/* One electrical edge, from the main loop, with the time stamp its interrupt took: us is on the clock of which ms is a thousandth. */
static inline void emit_edge(uint32_t us, int input, int high) {
  emit_begin("PTWRE,"); emit_number(emit_seq++); emit_char(','); emit_number(us); emit_char(',');
  emit_number((uint32_t)input); emit_char(','); emit_char(high ? 'H' : 'L');
  emit_end();
}
#endif
