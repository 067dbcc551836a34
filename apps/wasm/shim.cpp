// Symbols that Debian's WebAssembly libraries expect and do not bring: the stack protector of the compiler's
// run-time library, and the beginning of a C++ throw. There is no unwinding here, so a throw tells the host,
// which throws in its own language, and the instance is finished.
#include <cstdlib>
#include <cstring>
#include <typeinfo>

extern "C" {

__attribute__((import_module("host"), import_name("fatal"))) void host_fatal(const char* text,
                                                                             unsigned length);

unsigned long __stack_chk_guard = 1;
[[noreturn]] void __stack_chk_fail() {
  constexpr char k_text[] = "stack overrun";
  host_fatal(k_text, sizeof k_text - 1);
  __builtin_trap();
}

void* __cxa_allocate_exception(std::size_t size) noexcept {
  constexpr std::size_t k_room_for_header = 64;
  return std::calloc(1, size + k_room_for_header);
}

void __cxa_free_exception(void* exception) noexcept {
  std::free(exception);
}

[[noreturn]] void __cxa_throw(void*, std::type_info* type, void (*)(void*)) {
  host_fatal(type->name(), static_cast<unsigned>(std::strlen(type->name())));
  __builtin_trap();
}

}  // extern "C"
